package clutchwright.app.proofs;

import java.util.List;

/// One clutch and what it says, as a page shows it.
///
/// @param factor of the odds
/// @param says the same in words
public record EvidenceLine(
        List<Link> dams,
        List<Link> sires,
        String hatched,
        String looks,
        String factor,
        String says) {

    public EvidenceLine {
        dams = List.copyOf(dams);
        sires = List.copyOf(sires);
    }

    /// An animal's page.
    public record Link(String path, String text) {}
}
