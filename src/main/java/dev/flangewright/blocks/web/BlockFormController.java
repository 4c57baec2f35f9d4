package dev.flangewright.blocks.web;

import dev.flangewright.blocks.Block;
import dev.flangewright.blocks.BlockEntry;
import dev.flangewright.blocks.BlockSet;
import dev.flangewright.blocks.Blocks;
import dev.flangewright.blocks.KeepBlocks;
import dev.flangewright.blocks.ReadBlockSet;
import dev.flangewright.parts.FormRefusal;
import dev.flangewright.people.MayKeepBlocks;
import dev.flangewright.people.Refused;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Adds a block to a set, and changes what is known of it. */
@Controller
@MayKeepBlocks
class BlockFormController {

  private static final String PAGE = "blocks/block-form";

  private final ReadBlockSet read;
  private final Blocks blocks;
  private final KeepBlocks keep;

  BlockFormController(ReadBlockSet read, Blocks blocks, KeepBlocks keep) {
    this.read = read;
    this.blocks = blocks;
    this.keep = keep;
  }

  @GetMapping("/block-sets/{id}/blocks/new")
  String blank(@PathVariable long id, Model model) {
    model.addAttribute("form", BlockEntry.EMPTY);
    return page(read.of(id), model);
  }

  @PostMapping("/block-sets/{id}/blocks/new")
  String add(
      @PathVariable long id,
      @ModelAttribute("form") BlockEntry form,
      BindingResult said,
      Model model,
      HttpServletResponse response) {
    try {
      return back(id, keep.add(id, form));
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      return page(read.of(id), model);
    }
  }

  @GetMapping("/blocks/{id}/edit")
  String edit(@PathVariable long id, Model model) {
    Block block = block(id, model);
    model.addAttribute("form", BlockEntry.of(block));
    return page(block.blockSet(), model);
  }

  @PostMapping("/blocks/{id}/edit")
  String change(
      @PathVariable long id,
      @RequestParam long version,
      @ModelAttribute("form") BlockEntry form,
      BindingResult said,
      Model model,
      HttpServletResponse response) {
    try {
      Block block = keep.change(id, version, form);
      return back(block.blockSet().id(), block);
    } catch (Refused refusal) {
      FormRefusal.onto(said, response, refusal);
      return page(block(id, model).blockSet(), model);
    }
  }

  private Block block(long id, Model model) {
    Block block = blocks.findWithSetById(id).orElseThrow(() -> Refused.unknown("block", id));
    model.addAttribute("block", block);
    return block;
  }

  private static String page(BlockSet set, Model model) {
    model.addAttribute("set", set);
    model.addAttribute("build", set.build());
    model.addAttribute("kinds", BlockChoices.kinds());
    model.addAttribute("conditions", BlockChoices.conditions());
    return PAGE;
  }

  private static String back(long setId, Block block) {
    return "redirect:/block-sets/" + setId + "#block-" + block.id();
  }
}
