package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/// Lists the young of one case of masking, the product of its blocks.
final class YoungList {

    private final List<ActiveLocus> loci;
    private final List<Block> blocks;
    private final Scene scene;
    private final Fraction alive;

    YoungList(List<ActiveLocus> loci, List<Block> blocks, Scene scene, Fraction alive) {
        this.loci = loci;
        this.blocks = blocks;
        this.scene = scene;
        this.alive = alive;
    }

    /// What is settled of a young one so far; numbers by place of the locus.
    private record Part(
            List<Integer> fromDam,
            List<Integer> fromSire,
            List<Integer> shown,
            Optional<Sex> sex,
            Fraction chance) {

        Part with(Block block, Look look, Embryo kind) {
            var dam = new ArrayList<>(fromDam);
            var sire = new ArrayList<>(fromSire);
            var seen = new ArrayList<>(shown);
            for (var i = 0; i < block.loci.size(); i++) {
                var place = block.loci.get(i).place;
                dam.set(place, kind.fromDam().get(i));
                sire.set(place, kind.fromSire().get(i));
                seen.set(place, look.shown().get(i));
            }
            return new Part(dam, sire, seen, sex.or(kind::sex), chance.times(block.chanceOf(kind)));
        }
    }

    void addTo(List<Young> all) {
        var none = Collections.nCopies(loci.size(), ActiveLocus.NOTHING);
        var parts = List.of(new Part(none, none, none, Optional.empty(), Fraction.WHOLE));
        for (var b = 0; b < blocks.size(); b++) {
            var next = new ArrayList<Part>();
            for (var part : parts) {
                for (var look : scene.looks().get(b).all()) {
                    for (var kind : look.kinds()) {
                        next.add(part.with(blocks.get(b), look, kind));
                    }
                }
            }
            parts = next;
        }
        parts.forEach(part -> all.add(young(part)));
    }

    private Young young(Part part) {
        var fromDam = new ArrayList<Allele>();
        var fromSire = new ArrayList<Allele>();
        var shows = new ArrayList<Phenotype>();
        for (var locus : loci) {
            fromDam.add(locus.alleles.get(part.fromDam().get(locus.place)));
            fromSire.add(locus.alleles.get(part.fromSire().get(locus.place)));
            var shown = part.shown().get(locus.place);
            if (shown != ActiveLocus.NOTHING) {
                shows.add(locus.forms.get(shown));
            }
        }
        return new Young(fromDam, fromSire, part.sex(), shows, part.chance().dividedBy(alive));
    }
}
