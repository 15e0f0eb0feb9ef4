package trestle.http;

import trestle.endpoint.Calculation;

/** Writes answers in one media type. A new one is one class and one line in {@link Renderers}. */
interface Renderer {
    /** The word that asks for it in a query. */
    Options.Form form();

    /** What it writes, as the header has it. */
    String mediaType();

    /** Whether it can write the answers of a calculation; not every one has a drawing. */
    default boolean offers(Calculation<?, ?, ?, ?> calculation) {
        return true;
    }

    /** The answer in this media type. */
    byte[] render(Answered<?, ?, ?, ?> answered);
}
