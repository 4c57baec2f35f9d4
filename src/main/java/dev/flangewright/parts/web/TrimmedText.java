package dev.flangewright.parts.web;

import org.springframework.beans.propertyeditors.StringTrimmerEditor;
import org.springframework.web.bind.WebDataBinder;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.InitBinder;

/** Takes off the blanks around what was typed: a name copied with a space is the same name. */
@ControllerAdvice(basePackageClasses = TrimmedText.class)
class TrimmedText {

  @InitBinder
  void trim(WebDataBinder binder) {
    binder.registerCustomEditor(String.class, new StringTrimmerEditor(false));
  }
}
