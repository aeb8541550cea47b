package clutchwright.app.eggs;

import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// The bench at which a clutch hatches and is named.
///
/// @param guesses    the likeliest groups, to be tapped; empty where nothing can be predicted
/// @param genes      the genes that may show, to be tapped form by form
/// @param hatchlings in the order in which they were named
/// @param nextTag    what the next one will be called
public record BenchView(
        ClutchView clutch,
        List<GuessChoice> guesses,
        long groups,
        List<GenesInPlay.Gene> genes,
        List<HatchlingLine> hatchlings,
        Optional<Comparison> comparison,
        String nextTag,
        JudgedView judged,
        Form form)
        implements View {

    public BenchView {
        guesses = List.copyOf(guesses);
        genes = List.copyOf(genes);
        hatchlings = List.copyOf(hatchlings);
    }

    /// A group to tap.
    ///
    /// @param key   what the form sends
    /// @param forms the forms that are ticked with it
    /// @param digit the key that taps it; 0 where none does
    public record GuessChoice(String key, String forms, Expected.Guess guess, int digit) {}

    @Override
    public String template() {
        return "eggs/bench.jte";
    }

    @Override
    public String title() {
        return "Hatching " + clutch.clutch().number();
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.EGGS);
    }

    public String path() {
        return clutch.path();
    }

    public List<EggLine> waiting() {
        return clutch.eggs().stream().filter(EggLine::isWaiting).toList();
    }

    /// Eggs that have hatched, out of which a twin may come.
    public List<EggLine> hatched() {
        return clutch.eggs().stream().filter(line -> !line.hatchlings().isEmpty()).toList();
    }

    /// How many eggs hatch, as far as is known.
    public int toHatch() {
        return hatched().size() + waiting().size();
    }

    /// Whether the form has any egg to offer.
    public boolean isOpen() {
        return toHatch() > 0;
    }

    public int unjudged() {
        return (int)
                hatchlings.stream()
                        .filter(line -> !(line.look() instanceof HatchlingLine.Look.Seen))
                        .count();
    }
}
