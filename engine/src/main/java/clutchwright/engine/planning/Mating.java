package clutchwright.engine.planning;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.planning.Acquisition.Raised;
import clutchwright.engine.planning.Pairing.Target;
import clutchwright.engine.planning.PairingOdds.Sought;
import java.util.List;
import java.util.Optional;

/// A dam and a sire, each come by in its own way, bred each season until what is to be kept is
/// there.
///
/// Chances are those of its own, as if nothing else took clutches away from it, and as if ways
/// that have no mating in common were independent. `docs/mathematics.md`, "Routes".
final class Mating {

    final int number;
    final Acquisition dam;
    final Acquisition sire;
    final Pairing pairing;
    final PairingOdds odds;

    private final RouteLimits limits;

    /// By season: the chance that both have grown for a clutch that hatches in it.
    private final Chances ready;

    Mating(int number, GenePool pool, RouteLimits limits, Acquisition dam, Acquisition sire) {
        this.number = number;
        this.limits = limits;
        this.dam = dam;
        this.sire = sire;
        pairing = pool.pairing(dam.kind(), sire.kind());
        odds = pairing.odds(limits);
        ready = bothReady();
    }

    private Chances bothReady() {
        if (dam instanceof Raised her && sire instanceof Raised him) {
            if (her.mating().number == him.mating().number) {
                return her.mating().bothGrown(her, him);
            }
            // Who must be there for the other to come about is grown when the other is.
            if (her.closure().contains(him)) {
                return her.ready();
            }
            if (him.closure().contains(her)) {
                return him.ready();
            }
        }
        return dam.ready().and(sire.ready());
    }

    private Chances bothGrown(Raised female, Raised male) {
        var sought = List.of(male.sought(), female.sought());
        return ready.then(odds.grownWithin(male.sought(), female.sought(), perSeason(sought)), 0);
    }

    /// Whether it can begin at all within the seasons looked at.
    boolean canBegin() {
        return ready.last() > 1e-6;
    }

    Chances ready() {
        return ready;
    }

    /// By season, the chance that the clutches hatched until then brought what is sought.
    Chances hatched(List<Sought> sought) {
        return ready.then(odds.within(sought, perSeason(sought)), 1);
    }

    /// Expected clutches for each time that it brings what is sought, within as many seasons as
    /// are looked at.
    double clutches(List<Sought> sought) {
        var perSeason = perSeason(sought);
        return perSeason * perSuccess(odds.within(sought, perSeason));
    }

    private static double perSuccess(Chances within) {
        return (within.meanWait() - 1) / Math.max(1e-9, within.last());
    }

    int planned(List<Sought> sought) {
        return odds.planned(sought);
    }

    /// Clutches a season: no more than there are dams, than may be, or than are needed.
    private int perSeason(List<Sought> sought) {
        var most = Math.min(limits.clutchesPerSeason(), dam.count());
        return most == 1 ? 1 : Math.min(most, planned(sought));
    }

    Optional<Target> goal(Sex sex) {
        return pairing.goal(Optional.of(sex));
    }

    /// By season, the chance that the goal is reached; empty if it cannot be.
    Optional<Chances> goalReached() {
        if (!odds.canBringGoal()) {
            return Optional.empty();
        }
        var reached = ready.then(odds.goalWithin(goalPerSeason()), 1);
        return reached.last() > 1e-6 ? Optional.of(reached) : Optional.empty();
    }

    double goalClutches() {
        return goalPerSeason() * perSuccess(odds.goalWithin(goalPerSeason()));
    }

    private int goalPerSeason() {
        var most = Math.min(limits.clutchesPerSeason(), dam.count());
        return most == 1 ? 1 : Math.min(most, odds.goalPlanned());
    }
}
