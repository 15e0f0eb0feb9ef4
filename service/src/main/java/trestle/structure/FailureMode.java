package trestle.structure;

/** How a part gives way. */
public enum FailureMode {
    /** The fibre that is pulled. */
    TENSION,
    /** The fibre that is pressed. */
    COMPRESSION,
    /** Along its length. */
    SHEAR,
    /** The wall of a thin tube. */
    LOCAL_BUCKLING,
    /** A cap on its foam. */
    WRINKLING,
    /** The socket crushes. */
    BEARING
}
