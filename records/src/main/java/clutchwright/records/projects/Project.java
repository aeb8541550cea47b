package clutchwright.records.projects;

import clutchwright.engine.genetics.Sex;
import java.util.List;

/// What a house breeds towards over generations, and what it puts into it.
///
/// @param species short name of its catalogue
/// @param goal as the keeper writes it: genes, and how many of which sex
/// @param telling how it is found out what a hatchling carries unseen
/// @param clutchWorth what a clutch that is a step of it is worth to the keeper beyond its
///     hatchlings' price, 0 or more
/// @param leastClutches that a season's plan is to give it
/// @param purchases animals that could be bought for it
public record Project(
        ProjectId id,
        long version,
        String name,
        String species,
        String goal,
        Telling telling,
        Means means,
        double clutchWorth,
        int leastClutches,
        State state,
        String notes,
        List<Purchase> purchases) {

    public enum State {
        OPEN,
        DONE
    }

    public enum Told {
        BY_EYE,
        TEST_CLUTCH,
        LABORATORY
    }

    /// How it is found out what a hatchling carries unseen.
    ///
    /// @param tested genes that the tests tell, as the keeper writes them; blank for all of them
    /// @param price of one test, in the house's own money
    public record Telling(Told told, String tested, double price) {

        public static final Telling BY_EYE = new Telling(Told.BY_EYE, "", 0);

        public Telling {
            tested = tested.strip();
            if (!(price >= 0 && Double.isFinite(price))) {
                throw new IllegalArgumentException("a test at " + price);
            }
        }
    }

    /// What it may use, and what a season brings by nature.
    ///
    /// @param clutches a season
    /// @param eggs of a clutch
    /// @param hatchRate share of them that hatch
    /// @param maleSeasons until a male hatchling breeds
    /// @param femaleSeasons until a female hatchling breeds
    /// @param confidence chance with which a route counts as done
    /// @param seasons the last season looked at
    public record Means(
            int clutches,
            int eggs,
            double hatchRate,
            int maleSeasons,
            int femaleSeasons,
            double confidence,
            int seasons) {

        /// Common practice, no source.
        public static final Means USUAL = new Means(3, 6, 0.9, 2, 3, 0.9, 15);
    }

    /// @param genes as the keeper writes them
    /// @param amount what it would cost, in the house's own money
    public record Purchase(String genes, Sex sex, double amount) {

        public Purchase {
            genes = genes.strip();
            if (genes.isEmpty() || !(amount >= 0 && Double.isFinite(amount))) {
                throw new IllegalArgumentException(
                        "no purchase: %s at %s".formatted(genes, amount));
            }
        }
    }

    public Project {
        name = name.strip();
        goal = goal.strip();
        notes = notes.strip();
        purchases = List.copyOf(purchases);
    }
}
