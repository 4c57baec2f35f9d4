package dev.flangewright.records;

/** The folder of the database is on a network share. */
class OnNetworkShare extends IllegalStateException {

  private static final long serialVersionUID = 1L;

  OnNetworkShare(String type) {
    super(
        "The data folder is on a network share (%s). An embedded database is damaged there."
            .formatted(type));
  }
}
