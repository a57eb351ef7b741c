using System.Net;
using System.Net.Sockets;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;
using MQTTnet;
using MQTTnet.Protocol;

namespace Boardwright.Sensors.Tests;

/// <summary>Words over a real broker and real sockets on this machine.</summary>
public sealed class BrokerTests
{
    private static readonly TimeSpan Long = TimeSpan.FromSeconds(20);
    private readonly YardBook book = DemonstrationBook.Open();

    [Fact]
    public async Task A_word_of_a_sensor_reaches_the_desk_and_a_kept_one_does_not()
    {
        var place = new BrokerPlace("127.0.0.1", FreePort());
        var key = new BrokerKey("yard", "sticks and stickers");
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Pell", new SensorPlaced("shed/probe", "K1", SensorQuantity.Core, "C")));
        var desk = new SensorDesk(book, TimeProvider.System);
        await using var broker = await OwnBroker.StartAsync(place, key);
        using var sensor = await ConnectedAsync(place, key);
        await SayAsync(sensor, "kiln/K1/old", "12", kept: true);

        using var end = new CancellationTokenSource();
        var listening = new SensorListener(desk, place, key, TimeProvider.System).RunAsync(end.Token);
        await UntilAsync(() => desk.List().Listening is not null);
        await SayAsync(sensor, "shed/probe", "57.5");
        await SayAsync(sensor, "kiln/K1/new", "61");
        await UntilAsync(() => desk.List() is { Strangers.Count: > 0, Rows: [{ HeardAt: not null }] });
        await end.CancelAsync();
        await listening;

        Assert.Equal("57.5 °C", desk.List().Rows.Single().Shown);
        Assert.Equal(["kiln/K1/new"], desk.List().Strangers.Select(stranger => stranger.Topic));
    }

    [Fact]
    public async Task Nobody_comes_in_without_the_key()
    {
        var place = new BrokerPlace("127.0.0.1", FreePort());
        await using var broker = await OwnBroker.StartAsync(place, new("yard", "sticks and stickers"));
        using var client = new MqttClientFactory().CreateMqttClient();

        var fault = await Record.ExceptionAsync(async () =>
        {
            var answer = await client.ConnectAsync(new MqttClientOptionsBuilder().WithTcpServer(place.Host, place.Port).WithCredentials("yard", "guessed wrong").Build(), TestContext.Current.CancellationToken);
            Assert.NotEqual(MqttClientConnectResultCode.Success, answer.ResultCode);
        });

        Assert.True(fault is null or MQTTnet.Exceptions.MqttCommunicationException, $"{fault}");
        Assert.False(client.IsConnected);
    }

    [Fact]
    public async Task A_sensor_without_a_name_of_its_own_is_let_in()
    {
        var place = new BrokerPlace("127.0.0.1", FreePort());
        await using var broker = await OwnBroker.StartAsync(place, null);
        using var client = new MqttClientFactory().CreateMqttClient();

        var answer = await client.ConnectAsync(new MqttClientOptionsBuilder().WithTcpServer(place.Host, place.Port).WithClientId("").Build(), TestContext.Current.CancellationToken);

        Assert.Equal(MqttClientConnectResultCode.Success, answer.ResultCode);
    }

    [Fact]
    public async Task A_broker_that_is_not_there_is_told_and_found_when_it_comes()
    {
        var place = new BrokerPlace("127.0.0.1", FreePort());
        var desk = new SensorDesk(book, TimeProvider.System);
        using var end = new CancellationTokenSource();
        var listening = new SensorListener(desk, place, null, TimeProvider.System).RunAsync(end.Token);
        await UntilAsync(() => desk.List().LostSince is not null);

        await using var broker = await OwnBroker.StartAsync(place, null);
        await UntilAsync(() => desk.List() is { Listening: not null, LostSince: null });
        await end.CancelAsync();
        await listening;

        Assert.Equal(place.ToString(), desk.List().Listening);
    }

    [Theory]
    [InlineData("192.168.1.20", "192.168.1.20", 1883, false)]
    [InlineData("127.0.0.1:1884", "127.0.0.1", 1884, true)]
    [InlineData("localhost", "localhost", 1883, true)]
    public void A_place_is_a_host_and_a_port(string text, string host, int port, bool thisMachine)
    {
        var place = Assert.IsType<Outcome<BrokerPlace>.Done>(BrokerPlace.Read("--broker", text)).Value;
        Assert.Equal((host, port, thisMachine), (place.Host, place.Port, place.IsThisMachine));
    }

    [Theory]
    [InlineData("")]
    [InlineData(":1883")]
    [InlineData("host:0")]
    [InlineData("host:70000")]
    [InlineData("two words:1883")]
    public void Other_texts_are_refused(string text) => Assert.IsType<Outcome<BrokerPlace>.Refused>(BrokerPlace.Read("--broker", text));

    [Theory]
    [InlineData("yard:sticks and stickers\n", true)]
    [InlineData("yard:short", false)]
    [InlineData("no colon in this", false)]
    [InlineData("yard:sticks and stickers\nsecond:line of words", false)]
    public void A_key_is_one_line(string text, bool taken) => Assert.Equal(taken, BrokerKey.Read("--broker-key", text) is Outcome<BrokerKey>.Done);

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static async Task<IMqttClient> ConnectedAsync(BrokerPlace place, BrokerKey key)
    {
        var client = new MqttClientFactory().CreateMqttClient();
        await client.ConnectAsync(new MqttClientOptionsBuilder().WithTcpServer(place.Host, place.Port).WithCredentials(key.Name, key.Word).Build(), TestContext.Current.CancellationToken);
        return client;
    }

    private static Task<MqttClientPublishResult> SayAsync(IMqttClient client, string topic, string payload, bool kept = false) => client.PublishAsync(
        new MqttApplicationMessageBuilder().WithTopic(topic).WithPayload(payload).WithRetainFlag(kept).WithQualityOfServiceLevel(MqttQualityOfServiceLevel.AtLeastOnce).Build(), TestContext.Current.CancellationToken);

    private static async Task UntilAsync(Func<bool> met)
    {
        using var waited = new CancellationTokenSource(Long);
        while (!met())
            await Task.Delay(20, waited.Token);
    }
}
