package eggwright.intake.mqtt;

import java.net.ConnectException;
import java.net.NoRouteToHostException;
import java.net.SocketTimeoutException;
import java.net.UnknownHostException;
import javax.net.ssl.SSLException;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.jspecify.annotations.Nullable;

/** Why the library did not get to a broker. */
final class Reasons {
    private Reasons() {}

    static BrokerState.Why why(Exception refused) {
        if (refused instanceof BrokerRefused known) {
            return known.why();
        }
        for (Throwable cause = refused; cause != null; cause = cause.getCause()) {
            if (cause instanceof SSLException) {
                return BrokerState.Why.NOT_TRUSTED;
            }
            if (cause instanceof UnknownHostException
                    || cause instanceof ConnectException
                    || cause instanceof NoRouteToHostException
                    || cause instanceof SocketTimeoutException) {
                return BrokerState.Why.NOT_REACHED;
            }
        }
        if (refused instanceof MqttException known) {
            return switch (known.getReasonCode()) {
                case MqttException.REASON_CODE_FAILED_AUTHENTICATION, MqttException.REASON_CODE_NOT_AUTHORIZED ->
                    BrokerState.Why.NOT_LET_IN;
                case MqttException.REASON_CODE_CLIENT_TIMEOUT, MqttException.REASON_CODE_SERVER_CONNECT_ERROR ->
                    BrokerState.Why.NOT_REACHED;
                case MqttException.REASON_CODE_CONNECTION_LOST -> BrokerState.Why.LOST;
                case MqttException.REASON_CODE_SUBSCRIBE_FAILED -> BrokerState.Why.TOPIC_REFUSED;
                default -> BrokerState.Why.OTHER;
            };
        }
        return BrokerState.Why.OTHER;
    }

    /** In the words of the innermost cause that has any. The library gives none where the line was closed in order. */
    static String detail(@Nullable Throwable refused) {
        var said = "";
        for (var cause = refused; cause != null; cause = cause.getCause()) {
            var message = cause.getMessage();
            if (message != null && !message.isBlank()) {
                said = message;
            }
        }
        return said;
    }
}
