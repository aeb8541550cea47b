package clutchwright.app.catalogue;

import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// One locus with all its forms.
///
/// @param own `your own`, `changed by you`, or empty
/// @param shipped whether the species comes with it
/// @param version of the keeper's entry; empty where there is none
/// @param together what holds only beside something at other loci
public record LocusView(
        String species,
        String speciesName,
        String locus,
        String title,
        String own,
        boolean shipped,
        String version,
        String inheritance,
        String basis,
        List<String> notes,
        PairTable table,
        List<AlleleLine> alleles,
        List<FormLine> forms,
        List<CareLine> cautions,
        List<String> together,
        List<CombinationLine> combinations,
        List<Link> refused)
        implements View {

    public LocusView {
        notes = List.copyOf(notes);
        alleles = List.copyOf(alleles);
        forms = List.copyOf(forms);
        cautions = List.copyOf(cautions);
        together = List.copyOf(together);
        combinations = List.copyOf(combinations);
        refused = List.copyOf(refused);
    }

    public String path() {
        return "/catalogue/" + species + "/" + locus;
    }

    public boolean isComplex() {
        return alleles.size() > 1;
    }

    public boolean hasAnimals() {
        return alleles.stream().anyMatch(allele -> allele.showing() + allele.unseen() > 0);
    }

    @Override
    public String template() {
        return "catalogue/locus.jte";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.CATALOGUE);
    }
}
