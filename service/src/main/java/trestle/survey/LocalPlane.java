package trestle.survey;

import java.util.List;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicMask;
import org.locationtech.jts.geom.Coordinate;

/**
 * A plane that keeps distance and direction from its middle, by geodesics of the WGS 84 ellipsoid, [2]. x is east, y
 * north, m.
 *
 * @param latitudeDeg of the middle, °
 * @param longitudeDeg of the middle, °
 */
record LocalPlane(double latitudeDeg, double longitudeDeg) {
    /** About the middle of the corners of a ring. */
    static LocalPlane about(List<Position> corners) {
        return new LocalPlane(
                corners.stream().mapToDouble(Position::latitudeDeg).average().orElse(0),
                corners.stream().mapToDouble(Position::longitudeDeg).average().orElse(0));
    }

    Coordinate of(Position position) {
        GeodesicData way = Geodesic.WGS84.Inverse(
                latitudeDeg,
                longitudeDeg,
                position.latitudeDeg(),
                position.longitudeDeg(),
                GeodesicMask.DISTANCE | GeodesicMask.AZIMUTH);
        double azimuth = Math.toRadians(way.azi1);
        return new Coordinate(way.s12 * Math.sin(azimuth), way.s12 * Math.cos(azimuth));
    }

    Position back(Coordinate place) {
        double distance = Math.hypot(place.x, place.y);
        if (distance == 0) {
            return new Position(longitudeDeg, latitudeDeg);
        }
        double azimuth = Math.toDegrees(Math.atan2(place.x, place.y));
        GeodesicData way = Geodesic.WGS84.Direct(
                latitudeDeg, longitudeDeg, azimuth, distance, GeodesicMask.LATITUDE | GeodesicMask.LONGITUDE);
        return new Position(way.lon2, way.lat2);
    }
}
