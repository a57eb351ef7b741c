using System.Text.Json.Nodes;
using Boardwright.Quantities;
using Boardwright.Web.Layout;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Boardwright.Web.Api;

/// <summary>Numbers of a phone: asked for by its pages whenever they are open with signal, kept on it for the hours without.</summary>
public static class PhoneEndpoints
{
    /// <summary>204 for a device that remembers nobody: whoever only looks is set nothing aside. A page of another site cannot ask: cookies stay at home.</summary>
    public static void MapPhones(this IEndpointRouteBuilder routes, YardBook book)
    {
        ArgumentNullException.ThrowIfNull(routes);
        routes.MapPost("/phone/numbers", (HttpContext context) =>
        {
            if (Who.Of(context, book.State) is not { } person || TagNumbers.SetAside(book, Who.Phone(context), person) is not Outcome<string>.Done(var phone))
                return Results.NoContent();
            Who.KeepPhone(context, phone);
            var state = book.State;
            var left = new JsonObject(TagNumbers.Kinds.Select(kind => KeyValuePair.Create(kind.Prefix, (JsonNode?)new JsonArray([.. TagNumbers.Left(state, phone, kind.Prefix).Select(tag => (JsonNode)tag)]))));
            return Results.Text(new JsonObject { ["phone"] = phone, ["left"] = left }.ToJsonString(), "application/json");
        }).DisableAntiforgery();
    }
}
