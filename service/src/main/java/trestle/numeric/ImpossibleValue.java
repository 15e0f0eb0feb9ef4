package trestle.numeric;

/** A value that no calculation can work with: the argument, the value and the rule it breaks. */
public final class ImpossibleValue extends IllegalArgumentException {
    private final String argument;

    /**
     * States what is wrong.
     *
     * @param argument name of the argument
     * @param message a sentence with the value, its unit and the rule
     */
    public ImpossibleValue(String argument, String message) {
        super(message);
        this.argument = argument;
    }

    /**
     * The argument that was refused.
     *
     * @return its name
     */
    public String argument() {
        return argument;
    }
}
