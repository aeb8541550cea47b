package clutchwright.app.catalogue;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Reply;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/// One locus: what its alleles are, and what every pair of them looks like.
@Controller
public class LocusPage {

    private final Holding holding;

    LocusPage(Holding holding) {
        this.holding = holding;
    }

    @GetMapping("/catalogue/{species}/{locus}")
    public Reply show(@PathVariable String species, @PathVariable String locus) {
        if (holding.findLines(species).isEmpty()) {
            return GuidePage.noSuchSpecies(species);
        }
        var reading = LocusReading.of(holding, species);
        return reading.find(locus)
                .<Reply>map(entry -> Reply.show(reading.view(entry, List.of())))
                .orElseGet(() -> noSuchLocus(locus));
    }

    static Reply noSuchLocus(String locus) {
        return Reply.missing("The catalogue has no gene under the name " + locus + ".");
    }
}
