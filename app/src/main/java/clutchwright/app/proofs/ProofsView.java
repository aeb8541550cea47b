package clutchwright.app.proofs;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/// All open questions, page by page.
///
/// @param ready whether anything was worked out yet
/// @param fresh whether what is shown is of the records as they are now
/// @param animals how many are on record in all
/// @param genes that have an open question; the first is any
/// @param gene the one that is asked for; blank for any
/// @param total questions found
/// @param first of this page, from one
/// @param here the address of the list as it is seen now
/// @param doubtful findings among the records that cannot all be true
public record ProofsView(
        boolean ready,
        boolean fresh,
        int animals,
        List<Choice> genes,
        String gene,
        int total,
        int first,
        List<ProofRow> rows,
        String here,
        int doubtful)
        implements View {

    private static final int ON_A_PAGE = 25;

    public ProofsView {
        genes = List.copyOf(genes);
        rows = List.copyOf(rows);
    }

    static ProofsView of(ProofBoard.State state, Form query) {
        var gene = query.text("gene");
        if (state.last().isEmpty()) {
            return new ProofsView(
                    false, false, 0, List.of(), gene, 0, 1, List.of(), address(gene, 1), 0);
        }
        var worked = state.last().get();
        var found =
                worked.questions().stream()
                        .filter(question -> gene.isEmpty() || question.gene().equals(gene))
                        .toList();
        var pages = Math.max(1, (found.size() + ON_A_PAGE - 1) / ON_A_PAGE);
        var page = Math.clamp(number(query.text("page")), 1, pages);
        var rows =
                found.stream()
                        .skip((page - 1L) * ON_A_PAGE)
                        .limit(ON_A_PAGE)
                        .map(question -> ProofRow.of(question, worked))
                        .toList();
        return new ProofsView(
                true,
                state.fresh(),
                worked.animals().size(),
                genes(worked),
                gene,
                found.size(),
                (page - 1) * ON_A_PAGE + 1,
                rows,
                address(gene, page),
                worked.doubtful().size());
    }

    private static List<Choice> genes(ProofBoard.Worked worked) {
        var names = new TreeMap<String, String>();
        worked.questions()
                .forEach(question -> names.put(question.allele().name(), question.gene()));
        var choices = new ArrayList<Choice>();
        choices.add(new Choice("", "Any gene"));
        names.forEach((name, gene) -> choices.add(new Choice(gene, name)));
        return choices;
    }

    /// What is no number is the first page.
    private static int number(String text) {
        return text.matches("[0-9]{1,6}") ? Integer.parseInt(text) : 1;
    }

    private static String address(String gene, int page) {
        return "/proofs?gene=" + URLEncoder.encode(gene, StandardCharsets.UTF_8) + "&page=" + page;
    }

    public int last() {
        return first + rows.size() - 1;
    }

    public boolean hasEarlier() {
        return first > 1;
    }

    public boolean hasLater() {
        return last() < total;
    }

    public String earlier() {
        return address(gene, (first - 1) / ON_A_PAGE);
    }

    public String later() {
        return address(gene, (first - 1) / ON_A_PAGE + 2);
    }

    @Override
    public String template() {
        return "proofs/proofs.jte";
    }

    @Override
    public String title() {
        return "Proofs";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.PROOFS);
    }
}
