package dev.flangewright.overview.web;

import dev.flangewright.overview.ReadWall;
import dev.flangewright.overview.Wall;
import java.time.ZoneId;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The page for a screen on the wall of the shop, and the part of it that is asked for anew. */
@Controller
class WallController {

  private final ReadWall read;

  WallController(ReadWall read) {
    this.read = read;
  }

  @GetMapping("/builds/{id}/wall")
  String page(@PathVariable long id, Model model) {
    fill(model, id);
    return "overview/wall";
  }

  @GetMapping("/builds/{id}/wall/board")
  String board(@PathVariable long id, Model model) {
    fill(model, id);
    return "overview/_wall :: board";
  }

  private void fill(Model model, long buildId) {
    Wall wall = read.of(buildId);
    model.addAttribute("build", Map.of("id", buildId, "name", wall.name()));
    model.addAttribute("wall", WallPage.of(wall, ZoneId.systemDefault()));
  }
}
