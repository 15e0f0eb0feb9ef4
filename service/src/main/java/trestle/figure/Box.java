package trestle.figure;

/** A rectangle on the page; y grows downwards. */
record Box(double left, double top, double width, double height) {
    double right() {
        return left + width;
    }

    double bottom() {
        return top + height;
    }

    double middle() {
        return top + height / 2;
    }

    boolean overlaps(Box other) {
        return left < other.right() && other.left < right() && top < other.bottom() && other.top < bottom();
    }

    boolean contains(Box other) {
        return other.left >= left && other.right() <= right() && other.top >= top && other.bottom() <= bottom();
    }
}
