package trestle.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Arranges flags so that no name lies over another or over another's staff.
 *
 * <p>Names to the right of their staffs, set from the rightmost to the leftmost, each in the lowest
 * row above the staffs that it passes, never meet; nor do names to the left of theirs, the other way
 * round; nor the first kind with the second where all of it stands further right. So the flags are
 * cut in two at each place in turn, and the cut that needs the fewest rows is taken. Near the edges
 * of the page a name may have to go to the other side, and may find no room; so flags are taken in
 * one by one, the most important first, and one that leaves no arrangement is left out.
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
            Pole seat = new Pole(flag, place.applyAsDouble(flag.at()), 0, Anchor.START);
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
            if (here.isPresent()
                    && (best.isEmpty() || highest(here.get()) < highest(best.get()))) {
                best = here;
            }
        }
        return best;
    }

    private Optional<List<Pole>> cutAt(int cut, List<Pole> seats) {
        List<Pole> leftwards = new ArrayList<>();
        for (int i = seats.size() - 1; i >= 0; i--) {
            Pole seat = seats.get(i).on(i < cut ? Anchor.END : Anchor.START);
            Pole sided = seat.onPage() ? seat : seat.on(seat.otherSide());
            if (sided.anchor() == Anchor.END) {
                leftwards.add(0, sided);
            } else if (!seated(sided)) {
                return Optional.empty();
            }
        }
        for (Pole seat : leftwards) {
            if (!seated(seat)) {
                return Optional.empty();
            }
        }
        return Optional.of(poles);
    }

    private boolean seated(Pole seat) {
        for (int row = 0; seat.onPage() && row < mostRows; row++) {
            Pole pole = seat.in(row);
            Box text = pole.text();
            Box staff = pole.staff();
            if (texts.stream().noneMatch(other -> other.overlaps(text) || other.overlaps(staff))
                    && staffs.stream().noneMatch(text::overlaps)) {
                poles.add(pole);
                texts.add(text);
                staffs.add(staff);
                return true;
            }
        }
        return false;
    }
}
