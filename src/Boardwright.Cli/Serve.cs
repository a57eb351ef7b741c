using Boardwright.Quantities;
using Boardwright.Web.Hosting;
using Boardwright.Web.Plans;
using Boardwright.Yard.Book;
using Boardwright.Yard.Commands;
using Boardwright.Yard.UseCases;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace Boardwright.Cli;

/// <summary>Serves a book to the phones and desks of the yard, on this machine's own address only.</summary>
public static class Serve
{
    public static int Run(ServeOptions options, TextWriter output, TextWriter error)
    {
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(error);
        Directory.CreateDirectory(options.DataFolder);
        return OpenBook(options, output) switch
        {
            Outcome<YardBook>.Done(var book) => Pages(options, book, output, error),
            Outcome<YardBook>.Refused(var reasons) => Refused(reasons, error),
            _ => throw new InvalidOperationException("A book is opened or refused."),
        };
    }

    private static int Refused(IReadOnlyList<Refusal> reasons, TextWriter error)
    {
        error.WriteLine(string.Join("; ", reasons));
        return ExitCode.Refused;
    }

    private static int Pages(ServeOptions options, YardBook book, TextWriter output, TextWriter error)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory, WebRootPath = ".", ApplicationName = "boardwright" });
        builder.Logging.SetMinimumLevel(LogLevel.Warning).AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        builder.WebHost.UseUrls($"http://127.0.0.1:{options.Port}");
        builder.AddBoardwrightPages(book, Path.Combine(options.DataFolder, "keys"), options.DemoFolder, options.PlanWork, new PlanShelfFile(Path.Combine(options.DataFolder, "plans.json")));
        builder.Services.AddHostedService(_ => new DailyCopies(book, Place(options), Path.Combine(options.DataFolder, "copies", "daily"), TimeProvider.System, error));
        if ((options.Broker ?? options.Sensors) is { } broker)
            builder.Services.AddHostedService(services => new SensorStation(services.GetRequiredService<SensorDesk>(), broker, options.Broker is not null, options.BrokerKey, TimeProvider.System, error));
        using var app = builder.Build();
        app.MapBoardwrightPages();
        app.Start();
        _ = Task.Run(() => WorkAheadAsync(book, app.Services.GetRequiredService<PlanDesk>()));
        var address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        output.WriteLine($"Boardwright is at {address}  (Ctrl+C ends it; the book is in {Place(options)})");
        output.Flush();
        app.WaitForShutdown();
        return ExitCode.Done;
    }

    // The first page is asked for as soon as the address is printed: it has the machine to itself.
    private static readonly TimeSpan FirstPage = TimeSpan.FromSeconds(2.0);

    // What takes seconds is worked out before somebody waits for it: the first sheet and the stacks, then the plan, then how each table cures.
    private static async Task WorkAheadAsync(YardBook book, PlanDesk desk)
    {
        _ = MorningSheet.For(book.State, null);
        await Task.Delay(FirstPage);
        _ = StackList.Of(book.State);
        await desk.MadeAsync();
        foreach (var tag in book.State.Pours.Keys)
            _ = PourSheet.Of(book.State, tag, null);
    }

    private static Outcome<YardBook> OpenBook(ServeOptions options, TextWriter output) =>
        new FileHost(TextReader.Null).OpenBook(options.Yard is null ? "--data" : "--yard", Place(options), make: true).Then<YardBook>(book =>
        {
            if (options.DemoFolder is { } folder && book.State.Entries.Count == 0)
            {
                DemoStart.Fill(book, folder, options.Today ?? DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime));
                output.WriteLine($"A demonstration yard was made: {book.State.Entries.Count} entries.");
            }

            return book;
        });

    private static BookPlace Place(ServeOptions options) => options.Yard ?? BookPlace.OfFolder(options.DataFolder);
}
