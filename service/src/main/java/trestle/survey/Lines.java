package trestle.survey;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * Lines over a block in one direction: each strip as wide as the spacing, its line along its middle for as far as the
 * block reaches into it. A strip that a hole divides has a line on each side.
 */
final class Lines {
    private Lines() {}

    static List<Line> over(Block block, double directionRad, LineSpacing spacing) {
        Geometry turned = block.turned(directionRad);
        Envelope around = turned.getEnvelopeInternal();
        Edges edges = Edges.of(turned);
        int strips = spacing.strips(around.getHeight());
        double middle = (around.getMinY() + around.getMaxY()) / 2;
        List<Line> lines = new ArrayList<>();
        boolean onward = true;
        for (int strip = 0; strip < strips; strip++) {
            double y = middle + (strip - (strips - 1) / 2.0) * spacing.betweenLinesM();
            double half = spacing.betweenLinesM() / 2;
            List<Edges.Stretch> stretches = edges.stretches(y - half, y + half);
            if (!onward) {
                Collections.reverse(stretches);
            }
            for (Edges.Stretch stretch : stretches) {
                lines.add(line(stretch, y, strip, onward, directionRad, spacing));
            }
            onward = stretches.isEmpty() == onward;
        }
        return lines;
    }

    /** Photos go beyond the ends as far as the plan has it, evenly about the stretch. */
    private static Line line(
            Edges.Stretch stretch, double y, int strip, boolean onward, double directionRad, LineSpacing spacing) {
        int photos = spacing.photos(stretch.toM() - stretch.fromM());
        double half = (photos - 1) * spacing.betweenPhotosM() / 2;
        double middle = (stretch.fromM() + stretch.toM()) / 2;
        Coordinate first = Block.back(new Coordinate(middle - half, y), directionRad);
        Coordinate last = Block.back(new Coordinate(middle + half, y), directionRad);
        Coordinate from = onward ? first : last;
        Coordinate to = onward ? last : first;
        return new Line(List.of(from.x, from.y), List.of(to.x, to.y), strip, photos);
    }
}
