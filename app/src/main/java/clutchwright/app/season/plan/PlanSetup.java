package clutchwright.app.season.plan;

import clutchwright.app.holding.Holding;
import clutchwright.app.steering.ProjectRoutes;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/// What the pages of the season's plan share.
@Configuration(proxyBeanMethods = false)
class PlanSetup {

    @Bean
    PlanBoard planBoard(Holding holding, ProjectRoutes routes) {
        return new PlanBoard(holding, routes);
    }
}
