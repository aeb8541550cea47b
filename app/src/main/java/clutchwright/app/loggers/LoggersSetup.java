package clutchwright.app.loggers;

import clutchwright.app.holding.Holding;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/// What runs beside the pages.
@Configuration(proxyBeanMethods = false)
class LoggersSetup {

    @Bean(initMethod = "begin")
    LiveReadings liveReadings(Holding holding) {
        return new LiveReadings(holding);
    }

    @Bean(initMethod = "begin")
    AlarmPost alarmPost(Holding holding) {
        return new AlarmPost(holding);
    }
}
