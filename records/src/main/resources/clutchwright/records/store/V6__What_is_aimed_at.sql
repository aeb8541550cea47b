-- What is aimed at: the house's own price list, projects over generations, and the plan of a season.

create table price (
    id ${key},
    version ${number} not null check (version > 0),
    species text not null check (species <> ''),
    genes text not null check (genes <> ''),
    genes_key text not null check (genes_key <> ''),
    sex text not null check (sex in ('ANY', 'FEMALE', 'MALE')),
    amount ${real} not null check (amount >= 0),
    sells ${number} check (sells > 0),
    later ${real} check (later >= 0 and later <= amount),
    check ((sells is null) = (later is null)),
    unique (species, genes_key, sex)
) ${strict};

create table project (
    id ${key},
    version ${number} not null check (version > 0),
    name text not null check (name <> ''),
    name_key text not null unique check (name_key <> ''),
    species text not null check (species <> ''),
    goal text not null check (goal <> ''),
    told text not null check (told in ('BY_EYE', 'TEST_CLUTCH', 'LABORATORY')),
    tested text not null,
    test_price ${real} not null check (test_price >= 0),
    clutches ${number} not null check (clutches between 0 and 100),
    eggs ${number} not null check (eggs between 1 and 100),
    hatch_rate ${real} not null check (hatch_rate > 0 and hatch_rate <= 1),
    male_seasons ${number} not null check (male_seasons between 1 and 60),
    female_seasons ${number} not null check (female_seasons between 1 and 60),
    confidence ${real} not null check (confidence > 0 and confidence < 1),
    seasons ${number} not null check (seasons between 1 and 60),
    clutch_worth ${real} not null check (clutch_worth >= 0),
    least_clutches ${number} not null check (least_clutches >= 0),
    state text not null check (state in ('OPEN', 'DONE')),
    notes text not null
) ${strict};

create table purchase (
    id ${key},
    version ${number} not null check (version > 0),
    project ${number} not null references project (id),
    genes text not null check (genes <> ''),
    sex text not null check (sex in ('FEMALE', 'MALE')),
    amount ${real} not null check (amount >= 0)
) ${strict};
create index purchase_of_project on purchase (project);

create table plan_word (
    id ${key},
    version ${number} not null check (version > 0),
    season ${number} not null check (season between 1900 and 2999),
    dam ${number} not null references animal (id),
    sire ${number} not null references animal (id),
    word text not null check (word in ('PINNED', 'FORBIDDEN', 'OVERRULED')),
    reason text not null,
    check (word <> 'OVERRULED' or reason <> ''),
    unique (season, dam, sire, word)
) ${strict};
create index plan_word_of_dam on plan_word (dam);
create index plan_word_of_sire on plan_word (sire);

create table season_plan (
    id ${key},
    version ${number} not null check (version > 0),
    season ${number} not null check (season between 1900 and 2999),
    name text not null check (name <> ''),
    name_key text not null check (name_key <> ''),
    made_on text not null check (length(made_on) = 10),
    worth ${real} not null,
    bound ${real} not null,
    unique (season, name_key)
) ${strict};

create table season_plan_pair (
    id ${key},
    version ${number} not null check (version > 0),
    plan ${number} not null references season_plan (id),
    dam ${number} not null references animal (id),
    sire ${number} not null references animal (id),
    unique (plan, dam)
) ${strict};
create index season_plan_pair_of_dam on season_plan_pair (dam);
create index season_plan_pair_of_sire on season_plan_pair (sire);
