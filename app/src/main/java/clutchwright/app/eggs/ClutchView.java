package clutchwright.app.eggs;

import clutchwright.app.loggers.Pipping;
import clutchwright.app.parts.EggGlyphs;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.app.wording.Formats;
import clutchwright.engine.genetics.Caution;
import clutchwright.records.clutches.Box;
import clutchwright.records.clutches.Clutch;
import java.util.List;
import java.util.Optional;

/// One clutch, egg by egg.
///
/// @param boxes all there are, to complete from
/// @param cautions of the parents and of what can hatch
/// @param holdBacks what keeping several of its hatchlings is worth, gene by gene
/// @param pipping when its eggs pip
/// @param usual what the house does with eggs
/// @param keptSperm whether any male was with her in time
/// @param form  of what is to be done with the eggs that are ticked
public record ClutchView(
        Clutch clutch,
        Couple couple,
        List<EggLine> eggs,
        List<Box> boxes,
        Incubation incubation,
        List<Caution> cautions,
        List<HoldBack> holdBacks,
        Pipping pipping,
        BoxSplits.Usual usual,
        KeptSperm keptSperm,
        Form form)
        implements View {

    public ClutchView {
        eggs = List.copyOf(eggs);
        boxes = List.copyOf(boxes);
        cautions = List.copyOf(cautions);
        holdBacks = List.copyOf(holdBacks);
    }

    @Override
    public String template() {
        return "eggs/clutch.jte";
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

    public ExpectedHatch expectedHatch(Formats formats) {
        return ExpectedHatch.of(pipping, incubation.today(), formats);
    }

    /// What is to be said where no male was with her in time; empty where nothing is.
    public String noMaleInTime(Formats formats) {
        return keptSperm.words(couple, formats).orElse("");
    }

    public EggGlyphs glyphs() {
        return new EggGlyphs(eggs.stream().map(EggLine::look).toList());
    }

    public boolean anyWaiting() {
        return eggs.stream().anyMatch(EggLine::isWaiting);
    }

    /// Whether a waiting egg stands in a box.
    public boolean anyBoxed() {
        return eggs.stream().anyMatch(egg -> egg.isWaiting() && egg.box().isPresent());
    }

    public boolean anyToMark() {
        return eggs.stream().anyMatch(EggLine::canBeMarked);
    }

    public boolean anyHatchling() {
        return !clutch.hatchlings().isEmpty();
    }

    /// What the eggs that stand in no box would come to in one, or several.
    public List<EggBoxView.Split> splits(Formats formats) {
        return unboxed() == 0 ? List.of() : BoxSplits.usual(unboxed(), usual, formats);
    }

    /// At which set point that is.
    public String splitsAt(Formats formats) {
        return formats.warmth(usual.setCelsius());
    }

    /// The keeper's rule.
    public int mostInBox() {
        return usual.rules().mostInBox();
    }

    /// In which box that is.
    public String splitsIn() {
        return usual.rules().usualBox().isPresent() ? "in your usual box" : "in a tub of 20 litres";
    }

    /// Waiting eggs that stand in no box.
    public long unboxed() {
        return eggs.stream().filter(egg -> egg.isWaiting() && egg.box().isEmpty()).count();
    }
}
