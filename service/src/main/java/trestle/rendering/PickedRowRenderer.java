package trestle.rendering;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import trestle.batch.Csv;
import trestle.binding.Picks;

/** Picked values as one row, in the order of the picks, without a header and without a line end; cautions above it on request. */
public final class PickedRowRenderer implements Renderer {
    @Override
    public Options.Form form() {
        return Options.Form.CSV;
    }

    @Override
    public String mediaType() {
        return Csv.MEDIA_TYPE;
    }

    @Override
    public byte[] render(Answered<?, ?, ?, ?> answered) {
        Picks picks = new Picks(answered.options().picks());
        List<String> cells = picks.from(answered.tree()).stream()
                .map(Optional::of)
                .map(Csv::cell)
                .toList();
        return (answered.comments() + Csv.bareRow(cells)).getBytes(StandardCharsets.UTF_8);
    }
}
