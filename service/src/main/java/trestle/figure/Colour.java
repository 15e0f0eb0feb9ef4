package trestle.figure;

/**
 * What a colour is for, and its two values. Blue, orange and green-blue stay apart for readers who
 * see red and green alike; every colour that text is set in has a contrast of 4.5 or more.
 */
enum Colour {
    PAPER("#ffffff", "#14181d"),
    INK("#1c2430", "#e8ecf1"),
    MUTED("#566170", "#a5b0bd"),
    GRID("#e4e8ed", "#29313a"),
    AXIS("#8d98a5", "#66727f"),
    FIRST("#1763b8", "#6cb2ff"),
    SECOND("#b3500b", "#ffa657"),
    THIRD("#0b7566", "#56d0b8"),
    LIMIT("#b92c25", "#ff857b"),
    ATTENTION("#8a6100", "#e5c04b"),
    GOOD("#2c7a4b", "#5fd18b");

    private final String light;
    private final String dark;

    Colour(String light, String dark) {
        this.light = light;
        this.dark = dark;
    }

    String hex(boolean onDark) {
        return onDark ? dark : light;
    }
}
