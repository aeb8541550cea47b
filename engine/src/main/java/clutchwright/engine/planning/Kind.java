package clutchwright.engine.planning;

import clutchwright.engine.genetics.Sex;
import java.util.List;

/// Animals of one sex of which the same is held.
///
/// @param number among the kinds met
/// @param mixes by unit, the number of the mixture
record Kind(int number, Sex sex, List<Integer> mixes) {

    Kind {
        mixes = List.copyOf(mixes);
    }
}
