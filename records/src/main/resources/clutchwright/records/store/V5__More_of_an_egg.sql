-- More of an egg: what the light shows in the words of the trade, which way up it lies, what it weighs,
-- and photos of it. A condition of a table can be changed in PostgreSQL only, so the table of candlings
-- is made anew; numbers that were used once stay used, since the journal speaks of them.

create table candling_anew (
    id ${key},
    version ${number} not null check (version > 0),
    egg ${number} not null references egg (id),
    seen_on text not null check (length(seen_on) = 10),
    finding text not null
        check (finding in ('GOOD', 'NO_VEINS', 'DOUBTFUL', 'COLLAPSED', 'SLUG')),
    notes text not null
) ${strict};
insert into candling_anew (id, version, egg, seen_on, finding, notes)
    select id, version, egg, seen_on, finding, notes from candling;
drop table candling;
alter table candling_anew rename to candling;
create index candling_of_egg on candling (egg);
${candling_numbers};

alter table egg add column lies text not null default '';

create table egg_weighing (
    id ${key},
    version ${number} not null check (version > 0),
    egg ${number} not null references egg (id),
    made_on text not null check (length(made_on) = 10),
    grams ${real} not null check (grams > 0)
) ${strict};
create index egg_weighing_of_egg on egg_weighing (egg);

create table egg_photo (
    id ${key},
    version ${number} not null check (version > 0),
    egg ${number} not null references egg (id),
    digest text not null check (length(digest) = 64),
    added_on text not null check (length(added_on) = 10),
    width ${number} not null check (width > 0),
    height ${number} not null check (height > 0),
    caption text not null,
    unique (egg, digest)
) ${strict};
