using Boardwright.Documents;
using Boardwright.Documents.Blanks;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Boardwright.Web.Papers;

/// <summary>The papers by address: tag, piece tally and packing list of packs, run sheet of a charge, cutting sheet of a log, blank forms. ?paper= names the sheet.</summary>
public static class PaperEndpoints
{
    public static void MapPapers(this IEndpointRouteBuilder routes, YardBook book)
    {
        ArgumentNullException.ThrowIfNull(routes);
        ArgumentNullException.ThrowIfNull(book);
        routes.MapGet("/tally/{pack}/tag.pdf", (string pack, string? paper, HttpRequest request) =>
            Pdf($"tag-{pack}", Sheet(paper, Paper.A5).Then(sheet => PackPapers.Tag(book.State, pack, $"{request.Scheme}://{request.Host}/tally/{pack}", sheet))));
        routes.MapGet("/tally/{pack}/list.pdf", (string pack, string? paper) => Pdf($"tally-{pack}", Full(paper).Then(sheet => PackPapers.List(book.State, pack, sheet))));
        routes.MapGet("/promises/{order}/packing-list.pdf", (string order, string? paper) => Pdf($"packing-list-{order}", Full(paper).Then(sheet => PackPapers.Order(book.State, order, sheet))));
        routes.MapGet("/charges/{charge}/run-sheet.pdf", (string charge, string? paper) => Pdf($"run-sheet-{charge}", Full(paper).Then(sheet => ChargePapers.RunSheet(book.State, charge, book.Now, sheet))));
        routes.MapGet("/logs/{log}/cutting-sheet.pdf", (string log, string? thickness, string? pattern, string? orders, string? paper) => Pdf($"cutting-sheet-{log}", Full(paper).Then(sheet =>
            LogChoice.Read(thickness, pattern, orders).Then(choice => LogPapers.CuttingSheet(book.State, log, choice, sheet)))));
        routes.MapGet("/papers/all.pdf", (string? paper) => Pdf("blank-forms", Full(paper).Then<byte[]>(sheet => BlankPaper.RenderAll(BlankForms.All, book.State.Yard?.Name ?? "", book.Now, sheet))));
        routes.MapGet("/papers/{form}.pdf", (string form, string? paper) => Pdf(form, Full(paper).Then<byte[]>(sheet => BlankForms.Find(form) is { } blank
            ? BlankPaper.Render(blank, book.State.Yard?.Name ?? "", book.Now, sheet)
            : new Refusal("form", form, string.Join(", ", BlankForms.All.Select(one => one.Name))))));
    }

    private static Outcome<Paper> Full(string? name) => Sheet(name, Paper.A4).Then<Paper>(sheet =>
        sheet == Paper.A4 || sheet == Paper.Letter ? sheet : new Refusal("paper", name ?? "", "a4 or letter"));

    private static Outcome<Paper> Sheet(string? name, Paper usual) =>
        name is null ? usual : Paper.Find(name) is { } found ? found : new Refusal("paper", name, string.Join(", ", Paper.All.Select(paper => paper.Name)));

    private static IResult Pdf(string name, Outcome<byte[]> outcome) => outcome switch
    {
        Outcome<byte[]>.Done(var bytes) => Results.File(bytes, "application/pdf", $"{name}.pdf"),
        Outcome<byte[]>.Refused(var reasons) => Results.Text(string.Join("\n", reasons), "text/plain", System.Text.Encoding.UTF8, StatusCodes.Status409Conflict),
        Outcome<byte[]>.NoAnswer(var why) => Results.Text(why, "text/plain", System.Text.Encoding.UTF8, StatusCodes.Status422UnprocessableEntity),
        _ => throw new InvalidOperationException("An outcome has three cases."),
    };
}
