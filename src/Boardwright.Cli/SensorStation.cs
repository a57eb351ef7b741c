using System.Net.Sockets;
using Boardwright.Sensors;
using Boardwright.Yard.UseCases;

namespace Boardwright.Cli;

/// <summary>Listens to sensors while the program serves, with a broker of its own where that is asked.</summary>
internal sealed class SensorStation(SensorDesk desk, BrokerPlace place, bool own, BrokerKey? key, TimeProvider clock, TextWriter error) : BackgroundService
{
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        OwnBroker? broker = null;
        try
        {
            if (own)
                broker = await OwnBroker.StartAsync(place, key);
        }
        catch (SocketException fault)
        {
            await error.WriteLineAsync($"--broker: {place} cannot be used: {fault.Message}. The pages go on without sensors.");
            return;
        }

        try
        {
            await new SensorListener(desk, own ? place with { Host = place.IsThisMachine ? place.Host : "127.0.0.1" } : place, key, clock).RunAsync(stoppingToken);
        }
        finally
        {
            if (broker is not null)
                await broker.DisposeAsync();
        }
    }
}
