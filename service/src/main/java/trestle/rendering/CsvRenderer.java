package trestle.rendering;

import java.nio.charset.StandardCharsets;
import java.util.List;
import trestle.batch.Csv;
import trestle.binding.AnswerShape;
import trestle.binding.FieldPath;
import trestle.binding.Picks;

/** A header and one row: every plain value of the answer that stands in no list; cautions above them on request. */
public final class CsvRenderer implements Renderer {
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
        List<FieldPath> columns = AnswerShape.columns(answered.calculation().answerType());
        List<String> header = columns.stream().map(FieldPath::dotted).toList();
        List<String> cells = new Picks(columns)
                .whereThere(answered.tree()).stream().map(Csv::cell).toList();
        return (answered.comments() + Csv.row(header) + Csv.row(cells)).getBytes(StandardCharsets.UTF_8);
    }
}
