package trestle.rendering;

import trestle.endpoint.Calculation;

/** Writes answers in one media type. A new one is one class and one line in the list of those that are offered. */
public interface Renderer {
    /**
     * The word that asks for it in a query.
     *
     * @return the word
     */
    Options.Form form();

    /**
     * What it writes, as the header has it.
     *
     * @return the media type
     */
    String mediaType();

    /**
     * Whether it can write the answers of a calculation; not every one has a drawing.
     *
     * @param calculation of the catalogue
     * @return whether it can
     */
    default boolean offers(Calculation<?, ?, ?, ?> calculation) {
        return true;
    }

    /**
     * The answer in this media type.
     *
     * @param answered the request, and what answers it
     * @return the bytes
     */
    byte[] render(Answered<?, ?, ?, ?> answered);
}
