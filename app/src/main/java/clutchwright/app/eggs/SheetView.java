package clutchwright.app.eggs;

import clutchwright.app.parts.EggGlyphs;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Egg;
import clutchwright.records.clutches.Fate;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// A clutch on one sheet of paper.
///
/// @param species as it is called in print
public record SheetView(
        Clutch clutch,
        Couple couple,
        List<HatchlingLine> hatchlings,
        String species,
        LocalDate today)
        implements View {

    public SheetView {
        hatchlings = List.copyOf(hatchlings);
    }

    @Override
    public String template() {
        return "eggs/sheet.jte";
    }

    @Override
    public String title() {
        return "Clutch " + clutch.number();
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.EGGS);
    }

    public String path() {
        return "/eggs/" + clutch.id().value();
    }

    public EggGlyphs glyphs() {
        return new EggGlyphs(clutch.eggs().stream().map(ClutchCard::look).toList());
    }

    public Optional<LocalDate> firstHatched() {
        return clutch.eggs().stream()
                .map(Egg::fate)
                .filter(Fate.Hatched.class::isInstance)
                .map(Fate.Hatched.class::cast)
                .map(Fate.Hatched::pipped)
                .min(Comparator.naturalOrder());
    }
}
