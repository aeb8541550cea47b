package clutchwright.app.proofs;

import clutchwright.app.parts.Markup;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/// Whether one animal carries one gene.
///
/// @param gene as the trade names it
/// @param address of the gene within an address
/// @param method how the chance was reached; empty where it is exact
/// @param fresh whether the figures are of the records as they are now
/// @param none why no mate is proposed; empty where some are
/// @param more mates that are not listed
/// @param drawn the mate of the curve
/// @param telling the looks that speak for the gene with that mate
public record QuestionView(
        String id,
        String tag,
        String name,
        String sign,
        String sex,
        Markup line,
        String gene,
        String address,
        String chance,
        String method,
        boolean fresh,
        boolean tooYoung,
        List<EvidenceLine> evidence,
        String none,
        List<MateRow> mates,
        int more,
        String drawn,
        Optional<Markup> curve,
        String telling)
        implements View {

    public QuestionView {
        evidence = List.copyOf(evidence);
        mates = List.copyOf(mates);
    }

    public String path() {
        return "/proofs/" + id + "?gene=" + URLEncoder.encode(address, StandardCharsets.UTF_8);
    }

    @Override
    public String template() {
        return "proofs/question.jte";
    }

    @Override
    public String title() {
        return tag + ": " + gene;
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.PROOFS);
    }
}
