package dev.flangewright.people;

/** One thing that a role may do. Reading is open to every account. */
public enum Permission {
  /** Make and change builds, frames, parts, flanges, contours and the route; import files. */
  EDIT_REGISTER,
  /** Begin a piece; start and finish its stages; undo the last entry. */
  LOG_WORK,
  /** Do the named check of a hold point. */
  RELEASE_HOLD,
  /** Scrap a piece. */
  SCRAP,
  /** Accept a piece, send it back for rework, or accept it with a concession. */
  INSPECT,
  /** Make, change and disable accounts. */
  MANAGE_PEOPLE
}
