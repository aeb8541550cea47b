-- Building, seen before ovulation. A condition of a table can be changed in PostgreSQL only, so the
-- table is made anew. Numbers that were used once, by signs since removed, stay used: the journal
-- speaks of them.

create table sign_seen_anew (
    id ${key},
    version ${number} not null check (version > 0),
    pairing ${number} not null references pairing (id),
    kind text not null check (kind in ('LOCK', 'BUILDING', 'OVULATION', 'PRE_LAY_SHED')),
    seen_on text not null check (length(seen_on) = 10),
    notes text not null
) ${strict};
insert into sign_seen_anew (id, version, pairing, kind, seen_on, notes)
    select id, version, pairing, kind, seen_on, notes from sign_seen;
drop table sign_seen;
alter table sign_seen_anew rename to sign_seen;
create index sign_of_pairing on sign_seen (pairing);
${sign_numbers};
