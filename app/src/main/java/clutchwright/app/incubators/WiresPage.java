package clutchwright.app.incubators;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.loggers.AlarmPost;
import clutchwright.app.loggers.Broker;
import clutchwright.app.loggers.LiveReadings;
import clutchwright.app.loggers.MailServer;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.SensorWords;
import java.util.LinkedHashMap;
import java.util.regex.Pattern;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/// Where live readings are fetched from, and where alarms are mailed: nothing of both until it is
/// set here.
@Controller
public class WiresPage {

    private static final String PATH = IncubatorsPage.PATH + "/wires";
    private static final Pattern ADDRESS = Pattern.compile("(tcp|ssl)://[^\\s/:]+:\\d{1,5}");
    private static final Pattern MAIL = Pattern.compile("[^\\s@,;]+@[^\\s@,;]+");
    private static final int MOST_PORTS = 65_535;

    private final Holding holding;
    private final Preferring preferring;
    private final LiveReadings live;
    private final AlarmPost post;

    WiresPage(Holding holding, Preferring preferring, LiveReadings live, AlarmPost post) {
        this.holding = holding;
        this.preferring = preferring;
        this.live = live;
        this.post = post;
    }

    @GetMapping(PATH)
    public Reply show() {
        return Reply.show(view(broker(), mail()));
    }

    @PostMapping(PATH + "/broker")
    public Reply broker(Form form) {
        var fields = new Fields(form);
        if (!ADDRESS.matcher(form.text("address")).matches()) {
            fields.faulty(
                    "address",
                    "Write tcp:// or ssl://, the broker's name or number, and its port.");
        }
        return switch (fields.into(() -> new Broker(form.text("address"), form.text("user")))) {
            case Entry.Faulty<Broker>(var faulty) -> Reply.faulty(view(faulty, mail()));
            case Entry.Understood<Broker>(var asked) -> {
                if (!form.text("secret").isEmpty()) {
                    live.keepPassword(form.text("secret"));
                }
                var written =
                        Written.to(
                                holding,
                                "Set the broker of live readings",
                                tx -> {
                                    asked.put(tx);
                                    return true;
                                });
                live.look();
                yield written.going(PATH, "The broker is set.");
            }
        };
    }

    @PostMapping(PATH + "/broker/forget")
    public Reply forgetBroker() {
        var written =
                Written.to(
                        holding,
                        "Forgot the broker of live readings",
                        tx -> {
                            Broker.forget(tx);
                            return true;
                        });
        live.forgetPassword();
        live.look();
        return written.going(PATH, "No live readings are fetched any more.");
    }

    @PostMapping(PATH + "/mail")
    public Reply mail(Form form) {
        var fields = new Fields(form);
        var host = fields.text("host", "Write the name of the server that takes your mail.");
        var port = fields.whole("port", 1, MOST_PORTS);
        var way = fields.choice("way", MailServer.Way.class);
        for (var field : new String[] {"from", "to"}) {
            if (!MAIL.matcher(form.text(field)).matches()) {
                fields.faulty(field, "Write one address, such as snakes@example.org.");
            }
        }
        return switch (fields.into(
                () ->
                        new MailServer(
                                host.value(),
                                port.value(),
                                way.value(),
                                form.text("mailUser"),
                                form.text("from"),
                                form.text("to")))) {
            case Entry.Faulty<MailServer>(var faulty) -> Reply.faulty(view(broker(), faulty));
            case Entry.Understood<MailServer>(var asked) -> mail(form, asked);
        };
    }

    private Reply mail(Form form, MailServer asked) {
        if (!form.text("mailSecret").isEmpty()) {
            post.keepPassword(form.text("mailSecret"));
        }
        var trouble = post.tried(asked);
        if (trouble.isPresent()) {
            return Reply.faulty(
                    view(
                            broker(),
                            form.withFault(
                                    "host",
                                    "Nothing was saved, since a trial mail could not be sent: %s"
                                            .formatted(trouble.get()))));
        }
        return Written.to(
                        holding,
                        "Set where alarms are mailed",
                        tx -> {
                            asked.put(tx);
                            return true;
                        })
                .going(PATH, "A trial mail is on its way to %s.".formatted(asked.to()));
    }

    @PostMapping(PATH + "/mail/forget")
    public Reply forgetMail() {
        var written =
                Written.to(
                        holding,
                        "Forgot where alarms are mailed",
                        tx -> {
                            MailServer.forget(tx);
                            return true;
                        });
        post.forgetPassword();
        return written.going(PATH, "Alarms are not mailed any more.");
    }

    private WiresView view(Form broker, Form mail) {
        return new WiresView(
                broker,
                mail,
                state(),
                post.trouble().isEmpty()
                        ? ""
                        : "The last mail could not be sent: %s. It is tried again."
                                .formatted(post.trouble()),
                live.hasPassword(),
                post.hasPassword());
    }

    private String state() {
        var words =
                new SensorWords(
                        new Formats(preferring.preferences()),
                        holding.database().clock().getZone());
        return switch (live.state()) {
            case LiveReadings.State.Off() ->
                    "Nothing is fetched: no broker is set, or no sensor has a topic.";
            case LiveReadings.State.Connected(var since, var topics) ->
                    "Connected since %s, listening to %d %s."
                            .formatted(words.at(since), topics, topics == 1 ? "topic" : "topics");
            case LiveReadings.State.Failing(var why) ->
                    "Not connected: %s. It is tried again every few seconds.".formatted(why);
        };
    }

    private Form broker() {
        var values = new LinkedHashMap<String, String>();
        holding.database()
                .read(Broker::find)
                .ifPresent(
                        broker -> {
                            values.put("address", broker.address());
                            values.put("user", broker.user());
                        });
        return Form.of(values);
    }

    private Form mail() {
        var values = new LinkedHashMap<String, String>();
        values.put("port", "587");
        values.put("way", MailServer.Way.STARTTLS.name());
        holding.database()
                .read(MailServer::find)
                .ifPresent(
                        server -> {
                            values.put("host", server.host());
                            values.put("port", Integer.toString(server.port()));
                            values.put("way", server.way().name());
                            values.put("mailUser", server.user());
                            values.put("from", server.from());
                            values.put("to", server.to());
                        });
        return Form.of(values);
    }
}
