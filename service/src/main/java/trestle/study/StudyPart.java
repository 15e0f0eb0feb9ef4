package trestle.study;

/** What a finding of a study is about. */
enum StudyPart {
    /** What is sought. */
    TARGET,
    /** The field that is varied. */
    VARIED,
    /** The points of the plan. */
    FACTORS,
    /** The figures that are picked. */
    PICKS,
    /** The numbers that are drawn. */
    UNCERTAIN
}
