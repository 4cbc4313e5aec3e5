using ShopDays.Cli.Files.Jobs;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>What rougher hidden faces save, in words.</summary>
internal static class FaceWords
{
    // How many parts are named before the rest are only counted.
    private const int Named = 4;

    /// <summary>The sentences; none when no face is hidden or nothing is to be saved.</summary>
    public static IReadOnlyList<string> Of(FaceSavings savings)
    {
        var said = new List<string>();
        if (Written(savings) is { } written)
        {
            said.Add(written);
        }

        said.AddRange(savings.Further.Select(saving =>
            $"Hidden faces left from the {SurfaceWords.Of(saving.Standard)} plane would save about {WorkTimeText.Write(saving.Saved)}{(savings.Written.Count > 0 ? " more" : "")} ({Faces(saving.Faces)})."));
        return said;
    }

    /// <summary>What is saved already, and the most that could be, in one line; null when there is nothing to tell.</summary>
    public static string? InShort(FaceSavings savings) => string.Join(' ', ((string?[])[
        Written(savings),
        savings.Further.MaxBy(saving => saving.Saved) is { } most ? $"Hidden faces left from the {SurfaceWords.Of(most.Standard)} plane would save about {WorkTimeText.Write(most.Saved)}{(savings.Written.Count > 0 ? " more" : "")}." : null,
    ]).OfType<string>()) is { Length: > 0 } said ? said : null;

    private static string? Written(FaceSavings savings) => savings.Already > WorkTime.Zero
        ? $"Hidden faces left rougher as written save about {WorkTimeText.Write(savings.Already)} ({string.Join("; ", savings.Written.GroupBy(face => face.Now).OrderByDescending(group => group.Key).Select(group => $"{SurfaceWords.Of(group.Key)}: {Faces([.. group])}"))})."
        : null;

    private static string Faces(IReadOnlyList<HiddenFace> faces) => string.Join(", ", faces
        .GroupBy(face => face.Surface)
        .Select(group => $"{SurfaceWords.Of(group.Key)} of {CountWords.Names([.. group.Select(face => face.Part.Name)], Named)}"));
}
