using Boardwright.Storage.Postgres;
using Boardwright.Storage.Sqlite;
using Boardwright.Web.Hosting;
using Boardwright.Yard.Book;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace Boardwright.Cli;

/// <summary>Serves a book to the phones and desks of the yard, on this machine's own address only.</summary>
public static class Serve
{
    public static int Run(ServeOptions options, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(output);
        Directory.CreateDirectory(options.DataFolder);
        var book = OpenBook(options, output);

        var builder = WebApplication.CreateBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory, WebRootPath = ".", ApplicationName = "boardwright" });
        builder.Logging.SetMinimumLevel(LogLevel.Warning).AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        builder.WebHost.UseUrls($"http://127.0.0.1:{options.Port}");
        builder.AddBoardwrightPages(book, Path.Combine(options.DataFolder, "keys"));
        using var app = builder.Build();
        app.MapBoardwrightPages();
        app.Start();
        var address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        output.WriteLine($"Boardwright is at {address}  (Ctrl+C ends it; the book is in {Path.GetFullPath(options.DataFolder)})");
        output.Flush();
        app.WaitForShutdown();
        return ExitCode.Done;
    }

    private static YardBook OpenBook(ServeOptions options, TextWriter output)
    {
        var store = options.Postgres is { } text ? PostgresBook.Open(text) : SqliteBook.Open(Path.Combine(options.DataFolder, "yard.db"));
        var book = new YardBook(store, TimeProvider.System);
        if (options.DemoFolder is { } folder && book.State.Entries.Count == 0)
        {
            DemoStart.Fill(book, folder, options.Today ?? DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime));
            output.WriteLine($"A demonstration yard was made: {book.State.Entries.Count} entries.");
        }

        return book;
    }
}
