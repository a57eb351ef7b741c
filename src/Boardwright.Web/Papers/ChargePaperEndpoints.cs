using Boardwright.Documents;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Boardwright.Web.Papers;

/// <summary>The papers of charges over HTTP.</summary>
public static class ChargePaperEndpoints
{
    public static void MapChargePapers(this IEndpointRouteBuilder routes, YardBook book)
    {
        ArgumentNullException.ThrowIfNull(routes);
        ArgumentNullException.ThrowIfNull(book);
        routes.MapGet("/charges/{tag}/run-sheet.pdf", (string tag, string? paper) => Answer(tag, Sheet(paper).Then(size => ChargePapers.RunSheet(book.State, tag, book.Now, size))));
    }

    private static Outcome<Paper> Sheet(string? name) => name is null || name.Equals("a4", StringComparison.OrdinalIgnoreCase) ? Paper.A4
        : name.Equals("letter", StringComparison.OrdinalIgnoreCase) ? Paper.Letter
        : new Refusal("paper", name, "a4 or letter");

    private static IResult Answer(string tag, Outcome<byte[]> outcome) => outcome switch
    {
        Outcome<byte[]>.Done(var bytes) => Results.File(bytes, "application/pdf", $"run-sheet-{tag}.pdf"),
        Outcome<byte[]>.Refused(var reasons) => Results.Text(string.Join("\n", reasons), statusCode: StatusCodes.Status400BadRequest),
        Outcome<byte[]>.NoAnswer(var why) => Results.Text(why, statusCode: StatusCodes.Status422UnprocessableEntity),
        _ => throw new InvalidOperationException("An outcome has three cases."),
    };
}
