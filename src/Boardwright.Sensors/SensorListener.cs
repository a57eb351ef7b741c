using Boardwright.Yard.UseCases;
using MQTTnet;
using MQTTnet.Protocol;

namespace Boardwright.Sensors;

/// <summary>Carries what a broker tells to the desk of the sensors, and comes back by itself when the broker was away.</summary>
public sealed class SensorListener(SensorDesk desk, BrokerPlace place, BrokerKey? key, TimeProvider clock)
{
    /// <summary>What is listened to besides the sensors of the book, so that a new sensor can be found: our own habit of naming topics.</summary>
    public const string Neighbours = "kiln/#";

    private static readonly TimeSpan FirstWait = TimeSpan.FromSeconds(1.0);
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(30.0);
    private static readonly TimeSpan LookAgain = TimeSpan.FromSeconds(10.0);

    /// <summary>Listens until it is told to end. The desk makes its round every ten seconds, so that silence is noticed too.</summary>
    public async Task RunAsync(CancellationToken end)
    {
        using var client = new MqttClientFactory().CreateMqttClient();
        client.ApplicationMessageReceivedAsync += heard =>
        {
            // A word the broker kept from earlier is of unknown age: it says nothing of now.
            if (!heard.ApplicationMessage.Retain)
                desk.Heard(heard.ApplicationMessage.Topic, heard.ApplicationMessage.ConvertPayloadToString() ?? "");
            return Task.CompletedTask;
        };

        var wait = FirstWait;
        IReadOnlyList<string> subscribed = [];
        while (!end.IsCancellationRequested)
        {
            try
            {
                if (!client.IsConnected)
                {
                    await client.ConnectAsync(Options(), end);
                    (subscribed, wait) = ([], FirstWait);
                }

                subscribed = await SubscribeAsync(client, subscribed, end);
                desk.Listening(place.ToString(), reached: true);
                desk.Round();
                await Task.Delay(LookAgain, clock, end);
            }
            catch (OperationCanceledException) when (end.IsCancellationRequested)
            {
                break;
            }
            catch (Exception fault) when (fault is MQTTnet.Exceptions.MqttCommunicationException or OperationCanceledException or System.Net.Sockets.SocketException or InvalidOperationException)
            {
                desk.Listening(place.ToString(), reached: false);
                if (!await WaitedAsync(wait, end))
                    break;
                wait = wait * 2 < LongestWait ? wait * 2 : LongestWait;
            }
        }

        if (client.IsConnected)
            await client.DisconnectAsync(cancellationToken: CancellationToken.None);
    }

    private async Task<bool> WaitedAsync(TimeSpan wait, CancellationToken end)
    {
        try
        {
            await Task.Delay(wait, clock, end);
            return true;
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }

    private MqttClientOptions Options()
    {
        var options = new MqttClientOptionsBuilder().WithTcpServer(place.Host, place.Port).WithCleanStart().WithTimeout(TimeSpan.FromSeconds(5.0));
        return (key is null ? options : options.WithCredentials(key.Name, key.Word)).Build();
    }

    private async Task<IReadOnlyList<string>> SubscribeAsync(IMqttClient client, IReadOnlyList<string> subscribed, CancellationToken end)
    {
        IReadOnlyList<string> wanted = [Neighbours, .. desk.Topics.Where(topic => !topic.StartsWith("kiln/", StringComparison.Ordinal))];
        foreach (var topic in wanted.Except(subscribed))
            await client.SubscribeAsync(topic, MqttQualityOfServiceLevel.AtLeastOnce, end);
        foreach (var topic in subscribed.Except(wanted))
            await client.UnsubscribeAsync(topic, end);
        return wanted;
    }
}
