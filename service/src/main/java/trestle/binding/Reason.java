package trestle.binding;

/** Why a request is refused. */
public enum Reason {
    /** It cannot be read at all. */
    UNREADABLE,
    /** It can be read, but breaks the contract. */
    INVALID,
    /** It keeps the contract, but contradicts itself or physics. */
    IMPOSSIBLE,
    /** It is larger than what is taken. */
    TOO_LARGE,
    /** It took longer than what is given to it. */
    TOO_LATE,
    /** Nothing is wrong with it: the service failed on it. */
    FAILED
}
