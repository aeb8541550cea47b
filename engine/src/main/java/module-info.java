/// Everything that computes: chances, crosses, catalogues, the gene line, pedigrees, lay days, egg
// boxes.
@org.jspecify.annotations.NullMarked
module clutchwright.engine {
    requires static org.jspecify;

    exports clutchwright.engine.probability;
    exports clutchwright.engine.genetics;
    exports clutchwright.engine.catalogue;
    exports clutchwright.engine.notation;
    exports clutchwright.engine.pedigree;
    exports clutchwright.engine.network;
    exports clutchwright.engine.inference;
    exports clutchwright.engine.proof;
    exports clutchwright.engine.reasons;
    exports clutchwright.engine.season;
    exports clutchwright.engine.incubation;
    exports clutchwright.engine.planning;
}
