-- What a phone sends again, because no answer came, is known by its key. Not in the journal: taking a
-- change back must not let it be written a second time.

create table entry_key (
    entry_key text primary key check (length(entry_key) = 36),
    made_at text not null,
    change ${number} not null references change (id),
    went_to text not null,
    said text not null
) ${strict};
create index entry_key_made on entry_key (made_at);

-- By which a phone tells this collection from another that was once served at the same address.
create table house (
    mark text primary key check (length(mark) = 32)
) ${strict};
insert into house (mark) values (${mark});
