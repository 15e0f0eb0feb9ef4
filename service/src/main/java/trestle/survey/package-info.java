/**
 * A camera over a block of ground: height and overlap, lines, turns, photos, time in the wind, and how many flights that
 * takes. {@link trestle.survey.SurveyCoverage} is the way in.
 *
 * <p>The model: the ground sample distance is {@code H p / f}, p the pitch of the pixels [1]. Lines stand one footprint less
 * the side overlap apart, photos one footprint less the forward overlap. The block lies in a plane that keeps distances
 * and directions from its middle, by geodesics of the ellipsoid [2]; strips as wide as the spacing cover it, {@code
 * ceil(width / spacing) + 1} of them about its middle, and a line runs along the middle of each for as far as the block
 * reaches into the strip. Ground speed is that of the wind triangle; turns keep their radius at the fastest ground speed and
 * the bank that is allowed, and swing out where lines are closer than two radii. Flat ground.
 *
 * <p>Sources: [1] P. Wolf, B. Dewitt, B. Wilkinson, Elements of Photogrammetry (from memory), and the worked plan of NPTEL
 * course 105104100, module 3, lecture 21; [2] C. Karney, Algorithms for geodesics, J. Geodesy 87 (2013); [3] RFC 7946 for
 * GeoJSON; the length of a turn that swings out: three tangent arcs of one radius, geometry.
 */
package trestle.survey;
