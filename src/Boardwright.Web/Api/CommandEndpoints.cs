using System.Text.Json.Nodes;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Commands;
using Boardwright.Yard.Wire;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Boardwright.Web.Api;

/// <summary>The commands over HTTP: /api/NOUN/VERB with the options as query, a FILE as the posted body, the same JSON back.</summary>
/// <remarks>200 done, 400 refused, 422 no answer, as exit codes 0, 2 and 3 of the command line.</remarks>
public static class CommandEndpoints
{
    /// <summary>What a posted body is called where a command names its file.</summary>
    private const string PostedBody = "body";

    public static void MapCommands(this IEndpointRouteBuilder routes)
    {
        ArgumentNullException.ThrowIfNull(routes);
        var group = routes.MapGroup("/api");
        foreach (var command in CommandCatalogue.All.Where(command => !command.AtTerminalOnly))
        {
            group.MapMethods(command.Words.Replace(' ', '/'), ["GET", "POST"], (Func<HttpContext, Task<IResult>>)(context => AnswerAsync(command, context))).DisableAntiforgery();
        }
    }

    private static async Task<IResult> AnswerAsync(Command command, HttpContext context)
    {
        using var reader = new StreamReader(context.Request.Body);
        var host = new PostedFile(await reader.ReadToEndAsync(context.RequestAborted), context.RequestServices.GetRequiredService<YardBook>());
        var texts = context.Request.Query.Where(pair => pair.Key != "argument")
            .ToDictionary(pair => pair.Key, pair => (IReadOnlyList<string>)[.. pair.Value.Select(value => value ?? "")], StringComparer.Ordinal);
        var argument = context.Request.Query["argument"].FirstOrDefault() ?? (host.IsEmpty ? null : PostedBody);

        return Invocation.Of(command, texts, argument, host).Then(command.Run) switch
        {
            Outcome<object>.Done(var answer) => Json(WireJson.Text(answer), StatusCodes.Status200OK),
            Outcome<object>.Refused(var reasons) => Json(Failure(reasons.Select(reason => reason.ToString())), StatusCodes.Status400BadRequest),
            Outcome<object>.NoAnswer(var why) => Json(Failure([why]), StatusCodes.Status422UnprocessableEntity),
            _ => throw new InvalidOperationException("An outcome has three cases."),
        };
    }

    private static IResult Json(string text, int status) => Results.Text(text, "application/json", System.Text.Encoding.UTF8, status);

    private static string Failure(IEnumerable<string> reasons) =>
        new JsonObject { ["error"] = string.Join("; ", reasons) }.ToJsonString(WireJson.Options);

    /// <summary>Over HTTP a file is what was posted and the book is the one served; nothing on the server's disk can be named.</summary>
    private sealed class PostedFile(string body, YardBook book) : IAskHost
    {
        public bool IsEmpty => body.Length == 0;

        public Outcome<string> ReadFile(string what, string path) =>
            IsEmpty ? new Refusal(what, path, "the file's text as the body of a POST") : body;

        public Outcome<YardBook> OpenBook(string what, BookPlace? place, bool make) =>
            place is null ? book : new Refusal(what, place.ToString()!, "nothing: over HTTP the book is the one that is served");
    }
}
