using System.IO.Compression;
using Boardwright.Web.Api;
using Boardwright.Web.Layout;
using Boardwright.Web.Methods;
using Boardwright.Web.Plans;
using Boardwright.Web.Papers;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.Extensions.DependencyInjection;

namespace Boardwright.Web.Hosting;

/// <summary>Puts the pages, documents and commands of a book on a web host.</summary>
public static class BoardwrightPages
{
    // Nothing but our own files: no inline script, nothing from outside.
    private const string ContentPolicy =
        "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; frame-ancestors 'none'; base-uri 'self'; form-action 'self'";

    /// <summary>Services of the pages.</summary>
    /// <param name="builder">The host.</param>
    /// <param name="book">The book the pages show and write.</param>
    /// <param name="keysFolder">Where the keys that keep open forms valid over restarts are kept.</param>
    /// <param name="demoFolder">The demonstration's files, so that its days can be turned; null without.</param>
    /// <param name="planWork">Work put into a plan of the season, as a share of the usual.</param>
    /// <param name="shelf">Where plans lie between two runs of the program; null keeps them as long as it runs.</param>
    public static void AddBoardwrightPages(this WebApplicationBuilder builder, YardBook book, string keysFolder, string? demoFolder = null, double planWork = 1.0, IPlanShelf? shelf = null)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.WebHost.UseStaticWebAssets();   // run from the build's folder, styles and fonts still lie in the source; published, this does nothing
        builder.Services.AddSingleton(book);
        var plans = new PlanDesk(book, TimeProvider.System, planWork, shelf) { FirstRest = TimeSpan.FromSeconds(1.5) };
        builder.Services.AddSingleton(plans);
        builder.Services.AddSingleton(new WhatIfDesk(book, plans, planWork));
        builder.Services.AddSingleton(new SensorDesk(book, TimeProvider.System));
        builder.Services.AddSingleton(new DemonstrationDays(book, demoFolder));
        builder.Services.AddHttpContextAccessor();
        builder.Services.AddRazorComponents();
        var cookies = YardCookies.Of(keysFolder);
        builder.Services.AddSingleton(cookies);
        builder.Services.AddAntiforgery(options => options.Cookie.Name = cookies.Forms);
        builder.Services.AddDataProtection().SetApplicationName("boardwright").PersistKeysToFileSystem(Directory.CreateDirectory(keysFolder));
        builder.Services.AddResponseCompression(options => options.EnableForHttps = true);
        builder.Services.Configure<BrotliCompressionProviderOptions>(options => options.Level = CompressionLevel.Fastest);
    }

    /// <summary>Routes of the pages, the API and the static files.</summary>
    public static void MapBoardwrightPages(this WebApplication app)
    {
        ArgumentNullException.ThrowIfNull(app);
        app.UseResponseCompression();
        app.Use(static (context, next) =>
        {
            context.Response.Headers.ContentSecurityPolicy = ContentPolicy;
            context.Response.Headers.XContentTypeOptions = "nosniff";
            context.Response.Headers["Referrer-Policy"] = "same-origin";
            if (context.Request.Path.Value?.EndsWith("/js/leaves.js", StringComparison.Ordinal) == true)
            {
                context.Response.Headers["Service-Worker-Allowed"] = "/";   // it keeps pages of every address, not only of its own folder
            }

            return next(context);
        });
        app.UseStatusCodePagesWithReExecute("/not-there", createScopeForStatusCodePages: true);
        app.Use(MeantAnswer.InvokeAsync);
        app.UseAntiforgery();
        var book = app.Services.GetRequiredService<YardBook>();
        app.Use((context, next) =>
        {
            context.Response.OnStarting(() =>
            {
                Who.Keep(context, book.State);
                return Task.CompletedTask;
            });
            return next(context);
        });
        app.Use((context, next) =>
        {
            if (HttpMethods.IsGet(context.Request.Method) && TagPlace.OfWrongKind(book.State, context.Request.Path.Value) is { } place)
            {
                context.Response.Redirect(place.Path);
                return Task.CompletedTask;
            }

            return next(context);
        });
        app.MapStaticAssets();
        app.MapCommands();
        app.MapPhones(book);
        app.MapPapers(book);
        app.MapMethodPictures();
        app.MapSeason(book, app.Services.GetRequiredService<PlanDesk>(), TimeProvider.System);
        app.MapRazorComponents<App>();
    }
}
