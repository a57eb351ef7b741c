using System.Reflection;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Boardwright.Web.Methods;

/// <summary>The drawings of the validation page, built into the program beside it.</summary>
public static class MethodPictures
{
    public static void MapMethodPictures(this IEndpointRouteBuilder routes)
    {
        ArgumentNullException.ThrowIfNull(routes);
        routes.MapGet("/methods/validation/{name}.svg", (string name) =>
            Assembly.GetExecutingAssembly().GetManifestResourceStream($"methods/validation/{name}.svg") is { } picture ? Results.Stream(picture, "image/svg+xml") : Results.NotFound());
    }
}
