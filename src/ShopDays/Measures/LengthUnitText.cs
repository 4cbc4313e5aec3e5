using System.Diagnostics;

namespace ShopDays.Measures;

/// <summary>The names and marks of the units of length, and how long each unit is.</summary>
internal static class LengthUnitText
{
    private static readonly Dictionary<string, LengthUnit> Names = new(StringComparer.OrdinalIgnoreCase)
    {
        ["in"] = LengthUnit.Inch,
        ["inch"] = LengthUnit.Inch,
        ["inches"] = LengthUnit.Inch,
        ["ft"] = LengthUnit.Foot,
        ["foot"] = LengthUnit.Foot,
        ["feet"] = LengthUnit.Foot,
        ["mm"] = LengthUnit.Millimetre,
        ["millimetre"] = LengthUnit.Millimetre,
        ["millimetres"] = LengthUnit.Millimetre,
        ["millimeter"] = LengthUnit.Millimetre,
        ["millimeters"] = LengthUnit.Millimetre,
        ["cm"] = LengthUnit.Centimetre,
        ["centimetre"] = LengthUnit.Centimetre,
        ["centimetres"] = LengthUnit.Centimetre,
        ["centimeter"] = LengthUnit.Centimetre,
        ["centimeters"] = LengthUnit.Centimetre,
        ["m"] = LengthUnit.Metre,
        ["metre"] = LengthUnit.Metre,
        ["metres"] = LengthUnit.Metre,
        ["meter"] = LengthUnit.Metre,
        ["meters"] = LengthUnit.Metre,
    };

    /// <summary>One unit in eighths of a micrometre.</summary>
    public static decimal EighthMicrometres(LengthUnit unit) => unit switch
    {
        LengthUnit.Millimetre => Length.PerMillimetre,
        LengthUnit.Centimetre => Length.PerMillimetre * 10,
        LengthUnit.Metre => Length.PerMillimetre * 1_000,
        LengthUnit.Inch => Length.PerInch,
        LengthUnit.Foot => Length.PerInch * 12,
        _ => throw new UnreachableException($"no such unit of length: {unit}"),
    };

    /// <summary>Reads a unit if one stands here; null when there is neither a word nor a mark.</summary>
    public static TextFault? Read(TextCursor cursor, out LengthUnit? unit)
    {
        unit = null;
        cursor.SkipSpaces();
        if (IsInchMark(cursor.Current))
        {
            cursor.Position++;
            unit = LengthUnit.Inch;
            return null;
        }

        if (IsFootMark(cursor.Current))
        {
            var isDoubled = IsFootMark(cursor.Ahead(1));
            cursor.Position += isDoubled ? 2 : 1;
            unit = isDoubled ? LengthUnit.Inch : LengthUnit.Foot;
            return null;
        }

        var start = cursor.Position;
        var word = cursor.ReadWord();
        if (word.Length == 0)
        {
            return null;
        }

        if (!Names.TryGetValue(word, out var found))
        {
            var cure = NearestName.To(word, Names.Keys) is { } nearest ? $"; nearest: {nearest}" : "";
            return new(start, $"{QuotedText.Of(word)} is not a unit of length", "in, ft, mm, cm or m, such as 47 1/2 in" + cure);
        }

        cursor.TrySkip('.');
        unit = found;
        return null;
    }

    private static bool IsInchMark(char mark) => mark is '"' or '″' or '”' or '“';

    private static bool IsFootMark(char mark) => mark is '\'' or '′' or '’' or '‘';
}
