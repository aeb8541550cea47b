package clutchwright.app.demo;

import java.util.List;

/// What the invented house calls the animals it keeps: its females after plants of the hedge, its
/// males after tools of the mill.
final class Names {

    static final List<String> FEMALES =
            List.of(
                    "Sorrel",
                    "Tansy",
                    "Bryony",
                    "Campion",
                    "Vetch",
                    "Yarrow",
                    "Meadowsweet",
                    "Teasel",
                    "Clover",
                    "Betony",
                    "Speedwell",
                    "Orpine",
                    "Comfrey",
                    "Burnet",
                    "Fennel",
                    "Sweetbriar",
                    "Hawthorn",
                    "Eglantine",
                    "Hazel",
                    "Dogwood",
                    "Spindle",
                    "Elder",
                    "Rowan");
    static final List<String> MALES =
            List.of(
                    "Hopper",
                    "Sluice",
                    "Quern",
                    "Damsel",
                    "Sack",
                    "Tun",
                    "Rynd",
                    "Wallower",
                    "Spur",
                    "Crank",
                    "Bolter",
                    "Weir",
                    "Penstock",
                    "Leat",
                    "Cog",
                    "Runner",
                    "Bedstone");

    private Names() {}
}
