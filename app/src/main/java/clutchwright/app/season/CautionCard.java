package clutchwright.app.season;

import clutchwright.app.wording.CautionWords;
import clutchwright.app.wording.Formats;
import clutchwright.engine.genetics.Caution;
import java.util.ArrayList;

/// A welfare caution of a pairing, in words.
///
/// @param concern what it is about
/// @param animals which animals it is about, wherever they come from
/// @param whom who of this pairing is among them
/// @param basis how well it is agreed upon, and where the words rest
public record CautionCard(String concern, String animals, String whom, String words, String basis) {

    public static CautionCard of(Caution caution, AtStake stake, Formats formats) {
        var whom = new ArrayList<String>();
        if (AtStake.mayHave(stake.dam(), caution.parts())) {
            whom.add("the dam");
        }
        if (AtStake.mayHave(stake.sire(), caution.parts())) {
            whom.add("the sire");
        }
        if (stake.mayGive(caution.parts())) {
            whom.add("young of this pairing");
        }
        return new CautionCard(
                CautionWords.concern(caution.concern()),
                CautionWords.animals(caution),
                formats.list(whom),
                caution.words(),
                CautionWords.basis(caution));
    }
}
