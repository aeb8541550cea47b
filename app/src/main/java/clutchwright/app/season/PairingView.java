package clutchwright.app.season;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// One pairing, to be changed.
///
/// @param version of the pairing on record
/// @param signs that were seen, in the order of the days
/// @param asks a question to be answered first; empty where there is none
/// @param theirs what somebody else left on record meanwhile, a sentence a field; else empty
/// @param clutches how many came of it
public record PairingView(
        long id,
        long version,
        int season,
        Mate dam,
        Mate sire,
        Form form,
        List<Sign> signs,
        String asks,
        List<String> theirs,
        int clutches,
        List<Choice> dams,
        List<Choice> sires)
        implements View {

    public PairingView {
        signs = List.copyOf(signs);
        theirs = List.copyOf(theirs);
        dams = List.copyOf(dams);
        sires = List.copyOf(sires);
    }

    public record Sign(long id, String words) {}

    @Override
    public String template() {
        return "season/pairing.jte";
    }

    @Override
    public String title() {
        return dam.tag() + " × " + sire.tag();
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SEASON);
    }
}
