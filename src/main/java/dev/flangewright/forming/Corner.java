package dev.flangewright.forming;

/**
 * A place where a contour changes its direction abruptly (FM-CORNER).
 *
 * @param stationNumber the station nearest to it, as in the file
 * @param turnDeg by how much the direction turns there, positive to the left
 */
public record Corner(int stationNumber, double turnDeg) {}
