package trestle.sheet;

/** How grave a verdict or a finding is. */
public enum Grade {
    /** Nothing above a note. */
    FIT("Fit", "Everything essential was judged, and nothing found is above a note."),
    /** Worth knowing. */
    NOTE("Note", "Worth knowing."),
    /** Look before flying. */
    ATTENTION(
            "Attention",
            "Settle the findings before flying: a margin is thin, an input is doubtful, or something was not judged."),
    /** A limit is exceeded. */
    STOP("Stop", "A limit is exceeded: do not fly before the findings marked stop are settled.");

    private final String word;
    private final String meaning;

    Grade(String word, String meaning) {
        this.word = word;
        this.meaning = meaning;
    }

    /**
     * In one word.
     *
     * @return the word, with a capital
     */
    public String word() {
        return word;
    }

    /** So many findings of it, such as 1 attention or 3 notes. */
    String counted(long findings) {
        boolean several = findings > 1 && this != ATTENTION;
        return findings + " " + cssClass() + (several ? "s" : "");
    }

    String meaning() {
        return meaning;
    }

    /** Class in the style sheet. */
    String cssClass() {
        return word.toLowerCase(java.util.Locale.ROOT);
    }
}
