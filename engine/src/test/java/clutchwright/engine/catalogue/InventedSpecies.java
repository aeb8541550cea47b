package clutchwright.engine.catalogue;

import clutchwright.engine.catalogue.CatalogueText.Result;

/// A snake that does not exist, for tests that must not depend on what the trade believes.
final class InventedSpecies {

    static final String HEAD =
            """
            species draco-fictus
            common Paper snake
            latin Draco fictus
            sexes XY
            clutch 7
            """;

    static final String TEXT =
            HEAD
                    + """
                    locus chalk
                      title      Chalk series
                      inherits   autosomal
                      allele Chalk
                        mode      incomplete dominant
                        also      chk; blackboard
                      allele Slate
                        mode      incomplete dominant
                      allele Whisper
                        mode      recessive
                        note      Not seen alone.
                      form Chalk/Chalk; Chalk/Slate
                        name      Pale
                        also      the white one
                        viability 1/2 likely
                        masks     everything
                      form Chalk/Whisper
                        name      Echo
                    locus tin
                      title      Tin
                      inherits   sex-linked 1/20
                      allele Tin
                        mode      dominant
                        also      rosy
                      caution nerves
                        when      Tin x2
                        words     Some shake.
                    locus fog
                      title      Fog
                      inherits   autosomal
                      allele Fog
                        mode      recessive
                        also      rosy; het mist
                      form Fog/Fog
                        name      Fog
                        masks     tin; dew
                    locus dew
                      title      Dew
                      inherits   autosomal
                      standing   disputed
                      allele Dew
                        mode      recessive
                        also      echo
                    linkage  fog 1/10 dew
                    interaction Chalk + Tin x2
                      viability 0 disputed
                      caution early-death
                        words     Reported to die in the egg.
                        source    common practice, no source
                    combination Moor
                      also      heath
                      is        Fog + Tin
                    remark Oddity
                      also      odd one
                      note      Not inherited.
                    """;

    private InventedSpecies() {}

    static Species species() {
        return loaded(CatalogueText.read("invented.species", TEXT));
    }

    static Species loaded(Result result) {
        return switch (result) {
            case Result.Loaded(var species) -> species;
            case Result.Faulty(var faults) -> throw new AssertionError(faults.toString());
        };
    }
}
