package trestle.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Arranges flags so that no name lies over another or over another's staff.
 *
 * <p>A name that passes over the place of another flag has to stand above that one's staff. So with
 * the sides given, names are set in the order that this asks for, each in the lowest free row;
 * where two would have to stand above each other, these sides do not do. Sides are chosen by
 * cutting the flags in two: names of the left part go to the left of their staffs, of the right
 * part to the right, and near the edges of the page to where they fit. Of all cuts, the one with
 * the fewest rows is taken. Flags come in one by one, the most important first, and one that leaves
 * no arrangement is left out.
 */
final class FlagRows {
    /** More names than this are not read; it also bounds the search. */
    private static final int MOST = 18;

    private final int mostRows;
    private final List<Pole> poles = new ArrayList<>();
    private final List<Box> texts = new ArrayList<>();
    private final List<Box> staffs = new ArrayList<>();

    private FlagRows(int mostRows) {
        this.mostRows = mostRows;
    }

    /** The arrangement of those flags, the first before the later ones, that find room together. */
    static List<Pole> arranged(List<Flag> flags, DoubleUnaryOperator place, int mostRows) {
        List<Pole> best = List.of();
        List<Pole> seats = new ArrayList<>();
        for (Flag flag : flags.subList(0, Math.min(MOST, flags.size()))) {
            Pole seat = Pole.of(flag, place.applyAsDouble(flag.at()));
            seats.add(seat);
            seats.sort(Comparator.comparingDouble(Pole::x));
            Optional<List<Pole>> here = lowest(seats, mostRows);
            if (here.isPresent()) {
                best = here.get();
            } else {
                seats.remove(seat);
            }
        }
        return best;
    }

    static int highest(List<Pole> poles) {
        return poles.stream().mapToInt(Pole::row).max().orElse(0);
    }

    private static Optional<List<Pole>> lowest(List<Pole> seats, int mostRows) {
        Optional<List<Pole>> best = Optional.empty();
        for (int cut = 0; cut <= seats.size(); cut++) {
            Optional<List<Pole>> here = new FlagRows(mostRows).cutAt(cut, seats);
            if (here.isPresent() && (best.isEmpty() || highest(here.get()) < highest(best.get()))) {
                best = here;
            }
        }
        return best;
    }

    private Optional<List<Pole>> cutAt(int cut, List<Pole> seats) {
        List<Pole> waiting = new ArrayList<>();
        for (int i = seats.size() - 1; i >= 0; i--) {
            Pole seat = seats.get(i).on(i < cut ? Anchor.END : Anchor.START);
            waiting.add(seat.onPage() ? seat : seat.on(seat.otherSide()));
        }
        while (!waiting.isEmpty()) {
            Optional<Pole> next =
                    waiting.stream().filter(w -> overNone(w, waiting)).findFirst();
            if (next.isEmpty() || !seated(next.get())) {
                return Optional.empty();
            }
            waiting.remove(next.get());
        }
        return Optional.of(poles);
    }

    /** Whether a name passes over none of the places of those that have no row yet. */
    private static boolean overNone(Pole pole, List<Pole> waiting) {
        for (Pole other : waiting) {
            if (other != pole && pole.passes(other.x())) {
                return false;
            }
        }
        return true;
    }

    private boolean seated(Pole seat) {
        int rows = seat.onPage() ? mostRows : 0;
        for (int row = 0; row < rows; row++) {
            Pole pole = seat.in(row);
            Box text = pole.text();
            Box staff = pole.staff();
            if (clear(text, staff)) {
                poles.add(pole);
                texts.add(text);
                staffs.add(staff);
                return true;
            }
        }
        return false;
    }

    private boolean clear(Box text, Box staff) {
        for (int i = 0; i < texts.size(); i++) {
            Box other = texts.get(i);
            if (other.overlaps(text) || other.overlaps(staff) || staffs.get(i).overlaps(text)) {
                return false;
            }
        }
        return true;
    }
}
