-- Incubators, their sensors, and what these say. Readings are no deed of a person: they stand in no
-- journal. Those of a file count while the file is on record, so that taking it back takes them back.

create table incubator (
    id ${key},
    version ${number} not null check (version > 0),
    name text not null check (name <> ''),
    name_key text not null unique,
    set_point_celsius ${real} not null check (set_point_celsius between 20 and 40),
    notes text not null
) ${strict};

create table sensor (
    id ${key},
    version ${number} not null check (version > 0),
    name text not null check (name <> ''),
    name_key text not null,
    incubator ${number} not null references incubator (id),
    box ${number} references box (id),
    topic text not null,
    member text not null,
    scale text not null check (scale in ('CELSIUS', 'FAHRENHEIT')),
    correction_kelvin ${real} not null check (correction_kelvin between -5 and 5),
    silent_after_minutes ${number} not null check (silent_after_minutes between 1 and 10080),
    unique (incubator, name_key)
) ${strict};
create index sensor_in_box on sensor (box) where box is not null;
create unique index sensor_topic on sensor (topic, member) where topic <> '';

create table log_file (
    id ${key},
    version ${number} not null check (version > 0),
    sensor ${number} not null references sensor (id),
    name text not null check (name <> ''),
    readings ${number} not null check (readings > 0),
    first_at ${number} not null,
    last_at ${number} not null,
    check (first_at <= last_at)
) ${strict};
create index log_file_of_sensor on log_file (sensor);

-- When: seconds since 1970 in UTC. From which file: 0 where it came as a message.
create table reading (
    sensor ${number} not null,
    at ${number} not null,
    log_file ${number} not null,
    celsius ${real} not null check (celsius between -40 and 100),
    primary key (sensor, at, log_file)
) ${strict};
