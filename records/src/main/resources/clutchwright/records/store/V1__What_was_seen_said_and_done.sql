-- One script for SQLite and PostgreSQL. The placeholders (key, number, real, strict) are the only
-- words that differ; Dialect has them. Days are ISO text, a year alone where no day is known;
-- instants are ISO text in UTC. Every table whose rows can be edited has id and version.

create table change (
    id ${key},
    made_at text not null,
    made_by text not null check (made_by <> ''),
    what text not null,
    undoes ${number} references change (id),
    undone_by ${number} references change (id)
) ${strict};

create table entry (
    id ${key},
    change ${number} not null references change (id),
    table_name text not null,
    row_id ${number} not null,
    animal ${number},
    before_image text,
    after_image text,
    check (before_image is not null or after_image is not null)
) ${strict};
create index entry_of_change on entry (change);
create index entry_of_row on entry (table_name, row_id);
create index entry_of_animal on entry (animal) where animal is not null;

create table room (
    id ${key},
    version ${number} not null check (version > 0),
    name text not null check (name <> ''),
    name_key text not null unique,
    notes text not null
) ${strict};

create table rack (
    id ${key},
    version ${number} not null check (version > 0),
    room ${number} not null references room (id),
    name text not null check (name <> ''),
    name_key text not null,
    notes text not null,
    unique (room, name_key)
) ${strict};

create table tub (
    id ${key},
    version ${number} not null check (version > 0),
    rack ${number} not null references rack (id),
    name text not null check (name <> ''),
    name_key text not null,
    notes text not null,
    unique (rack, name_key)
) ${strict};

create table animal (
    id ${key},
    version ${number} not null check (version > 0),
    tag text not null check (tag <> ''),
    tag_key text not null unique,
    name text not null,
    sex text check (sex in ('FEMALE', 'MALE')),
    hatched text check (length(hatched) in (4, 10)),
    dam ${number} references animal (id),
    sire ${number} references animal (id),
    sire_question text,
    without_sire ${number} not null check (without_sire in (0, 1)),
    origin text not null check (origin in ('HATCHED_HERE', 'BOUGHT', 'WILD_CAUGHT', 'UNKNOWN')),
    origin_from text not null,
    acquired text check (length(acquired) = 10),
    line text not null,
    credit text not null,
    status text not null check (status in
        ('KEPT', 'HOLD_BACK', 'FOR_SALE', 'SOLD', 'LOANED', 'DEAD', 'UNKNOWN')),
    place ${number} references tub (id),
    species text not null check (species <> ''),
    notes text not null,
    check (dam <> id and sire <> id and dam <> sire),
    check (sire is null or sire_question is null),
    check (without_sire = 0 or (dam is not null and sire is null and sire_question is null))
) ${strict};
create index animal_of_dam on animal (dam) where dam is not null;
create index animal_of_sire on animal (sire) where sire is not null;
create index animal_in_place on animal (place) where place is not null;
create index animal_hatched on animal (hatched);
create index animal_status on animal (status);

create table statement (
    id ${key},
    version ${number} not null check (version > 0),
    animal ${number} not null references animal (id),
    kind text not null check (kind in ('CLAIM', 'SIGHTING')),
    written text not null check (written <> ''),
    canonical text not null,
    species text not null check (species <> ''),
    made_on text check (length(made_on) = 10),
    made_by text not null,
    source text not null,
    doubted ${number} not null check (doubted in (0, 1)),
    genes text not null
) ${strict};
create index statement_of_animal on statement (animal);

create table pairing (
    id ${key},
    version ${number} not null check (version > 0),
    season ${number} not null check (season between 1900 and 2999),
    dam ${number} not null references animal (id),
    sire ${number} not null references animal (id),
    state text not null check (state in ('PLANNED', 'ACTIVE', 'DONE')),
    put_together text check (length(put_together) = 10),
    separated text check (length(separated) = 10),
    notes text not null,
    unique (season, dam, sire),
    check (dam <> sire)
) ${strict};
create index pairing_of_dam on pairing (dam);
create index pairing_of_sire on pairing (sire);

create table sign_seen (
    id ${key},
    version ${number} not null check (version > 0),
    pairing ${number} not null references pairing (id),
    kind text not null check (kind in ('LOCK', 'OVULATION', 'PRE_LAY_SHED')),
    seen_on text not null check (length(seen_on) = 10),
    notes text not null
) ${strict};
create index sign_of_pairing on sign_seen (pairing);

create table clutch (
    id ${key},
    version ${number} not null check (version > 0),
    season ${number} not null check (season between 1900 and 2999),
    running ${number} not null check (running > 0),
    dam ${number} not null references animal (id),
    sire ${number} references animal (id),
    sire_question text,
    without_sire ${number} not null check (without_sire in (0, 1)),
    pairing ${number} references pairing (id),
    laid_on text not null check (length(laid_on) = 10),
    species text not null check (species <> ''),
    notes text not null,
    unique (season, running),
    check (sire is null or sire_question is null)
) ${strict};
create index clutch_of_dam on clutch (dam);
create index clutch_of_sire on clutch (sire) where sire is not null;
create index clutch_of_pairing on clutch (pairing) where pairing is not null;

-- A sire in doubt: of one animal, or of a clutch until its young have their own.
create table sire_candidate (
    id ${key},
    version ${number} not null check (version > 0),
    animal ${number} references animal (id),
    clutch ${number} references clutch (id),
    place ${number} not null,
    candidate ${number} not null references animal (id),
    weight text not null check (weight like '%/%'),
    check ((animal is null) <> (clutch is null)),
    check (candidate <> animal),
    unique (animal, candidate),
    unique (clutch, candidate)
) ${strict};
create index candidate_is on sire_candidate (candidate);

create table box (
    id ${key},
    version ${number} not null check (version > 0),
    label text not null check (label <> ''),
    label_key text not null unique,
    incubator text not null,
    notes text not null
) ${strict};

create table egg (
    id ${key},
    version ${number} not null check (version > 0),
    clutch ${number} not null references clutch (id),
    running ${number} not null check (running > 0),
    fate text not null check (fate in ('INCUBATING', 'SLUG', 'LOST', 'HATCHED')),
    box ${number} references box (id),
    fated_on text check (length(fated_on) = 10),
    finding text not null,
    unique (clutch, running),
    check ((fate in ('LOST', 'HATCHED')) = (fated_on is not null))
) ${strict};
create index egg_in_box on egg (box) where box is not null;

-- A hatchling is on record only through its egg; two of one egg are twins.
create table hatchling (
    id ${key},
    version ${number} not null check (version > 0),
    egg ${number} not null references egg (id),
    animal ${number} not null unique references animal (id)
) ${strict};
create index hatchling_of_egg on hatchling (egg);

create table candling (
    id ${key},
    version ${number} not null check (version > 0),
    egg ${number} not null references egg (id),
    seen_on text not null check (length(seen_on) = 10),
    finding text not null check (finding in ('GOOD', 'DOUBTFUL', 'SLUG')),
    notes text not null
) ${strict};
create index candling_of_egg on candling (egg);

create table weighing (
    id ${key},
    version ${number} not null check (version > 0),
    animal ${number} not null references animal (id),
    made_on text not null check (length(made_on) = 10),
    grams ${real} not null check (grams > 0),
    notes text not null
) ${strict};
create index weighing_of_animal on weighing (animal, made_on);

create table meal (
    id ${key},
    version ${number} not null check (version > 0),
    animal ${number} not null references animal (id),
    made_on text not null check (length(made_on) = 10),
    prey text not null,
    grams ${real} check (grams > 0),
    taken ${number} not null check (taken in (0, 1)),
    notes text not null
) ${strict};
create index meal_of_animal on meal (animal, made_on);

create table shed (
    id ${key},
    version ${number} not null check (version > 0),
    animal ${number} not null references animal (id),
    made_on text not null check (length(made_on) = 10),
    complete ${number} not null check (complete in (0, 1)),
    notes text not null
) ${strict};
create index shed_of_animal on shed (animal, made_on);

create table health_note (
    id ${key},
    version ${number} not null check (version > 0),
    animal ${number} not null references animal (id),
    made_on text not null check (length(made_on) = 10),
    notes text not null check (notes <> '')
) ${strict};
create index health_note_of_animal on health_note (animal, made_on);

create table photo (
    id ${key},
    version ${number} not null check (version > 0),
    animal ${number} not null references animal (id),
    digest text not null check (length(digest) = 64),
    added_on text not null check (length(added_on) = 10),
    width ${number} not null check (width > 0),
    height ${number} not null check (height > 0),
    caption text not null,
    unique (animal, digest)
) ${strict};

create table overlay_entry (
    id ${key},
    version ${number} not null check (version > 0),
    species text not null check (species <> ''),
    locus text not null check (locus <> ''),
    written text not null check (written <> ''),
    unique (species, locus)
) ${strict};

create table setting (
    id ${key},
    version ${number} not null check (version > 0),
    name text not null unique check (name <> ''),
    held text not null
) ${strict};

-- What follows from the rows above, kept for speed. Not in the journal: rewritten at the end of
-- every transaction for the animals that it touched, undo included.
create table animal_search (
    animal ${number} primary key,
    words text not null,
    tag_order text not null
) ${strict};
create index animal_search_order on animal_search (tag_order);

create table animal_gene (
    animal ${number} not null,
    statement ${number} not null,
    species text not null,
    locus text not null,
    allele text not null,
    allele_key text not null,
    shown ${number} not null check (shown in (0, 1)),
    latest ${number} not null check (latest in (0, 1))
) ${strict};
create index animal_gene_of_animal on animal_gene (animal);
create index animal_gene_word on animal_gene (allele_key, shown, latest);
create index animal_gene_locus on animal_gene (species, locus);
