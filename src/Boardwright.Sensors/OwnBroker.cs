using System.Net;
using System.Security.Cryptography;
using System.Text;
using MQTTnet.Protocol;
using MQTTnet.Server;

namespace Boardwright.Sensors;

/// <summary>A small broker for a yard that has none: sensors speak to it, and this program listens.</summary>
/// <remarks>Nothing is kept over a restart. Beyond this machine it asks everybody for the key; the net of the yard is still to be kept apart from the world's.</remarks>
public sealed class OwnBroker : IAsyncDisposable
{
    private readonly MqttServer server;

    private OwnBroker(MqttServer server) => this.server = server;

    /// <summary>Begins to serve.</summary>
    /// <param name="place">An address of this machine.</param>
    /// <param name="key">What clients must show; null lets every client in.</param>
    /// <exception cref="System.Net.Sockets.SocketException">The port is taken, or the address is not one of this machine.</exception>
    public static async Task<OwnBroker> StartAsync(BrokerPlace place, BrokerKey? key)
    {
        ArgumentNullException.ThrowIfNull(place);
        var address = place.Host == "localhost" ? IPAddress.Loopback : IPAddress.Parse(place.Host);
        var server = new MqttServerFactory().CreateMqttServer(new MqttServerOptionsBuilder()
            .WithDefaultEndpoint().WithDefaultEndpointPort(place.Port).WithDefaultEndpointBoundIPAddress(address).WithDefaultEndpointBoundIPV6Address(IPAddress.None).Build());
        server.ValidatingConnectionAsync += asked =>
        {
            // A sensor without a name of its own gets one, as the standard allows (section 3.1.3.1).
            if (asked.ClientId.Length == 0)
                asked.AssignedClientIdentifier = $"nameless-{Guid.NewGuid():N}";
            asked.ReasonCode = key is null || (asked.UserName == key.Name && Same(asked.Password, key.Word)) ? MqttConnectReasonCode.Success : MqttConnectReasonCode.BadUserNameOrPassword;
            return Task.CompletedTask;
        };

        await server.StartAsync();
        return new(server);
    }

    public async ValueTask DisposeAsync()
    {
        await server.StopAsync();
        server.Dispose();
    }

    private static bool Same(string? given, string word) => CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(given ?? ""), Encoding.UTF8.GetBytes(word));
}
