using Advance.Domain.Venues;
using Advance.Reading.Shapes;

namespace Advance.Reading.Venues;

/// <summary>The room that the stage stands in.</summary>
internal static class HallShape
{
    public static readonly RecordShape<Hall> It = new("hall", "The room that the stage stands in.", keys =>
    {
        var clearHeight = keys.Open("clear-height", Written.Length, "From the floor to the lowest thing overhead.");
        var floor = keys.Defaulted("floor", Written.Text, "", "What it is made of.", "not said");
        var seats = keys.Defaulted("seats", Written.Text, "", "Who sits how.", "not said");
        var openAir = keys.Open("open-air", Written.YesNo, "Whether wind gets at what stands there, also under a roof without walls.");
        var snow = keys.Open("snow", Written.YesNo, "Whether snow may lie on its roof while something hangs there.");
        var ponding = keys.Open("ponding", Written.YesNo, "Whether rain may stand on its roof: a flat one, a tent.");
        return row => new Hall(clearHeight(row), floor(row), seats(row)) { IsOpenAir = openAir(row), HasSnow = snow(row), HasPonding = ponding(row) };
    });
}
