using ShopDays.Measures;

namespace ShopDays.Prices;

/// <summary>What a line of a quote is for.</summary>
public enum QuotedFor
{
    /// <summary>The piece, all that belongs to it among it.</summary>
    Piece,

    /// <summary>Delivery and placing, where it is taxed otherwise.</summary>
    Delivery,
}

/// <summary>A line of a quote.</summary>
/// <param name="For">What it is for.</param>
/// <param name="Amount">What is quoted: tax among it where taxes are included.</param>
/// <param name="TaxRate">Its tax.</param>
/// <param name="Tax">The tax in it or on it.</param>
public sealed record QuotedLine(QuotedFor For, Money Amount, Percent TaxRate, Money Tax);

/// <summary>A payment.</summary>
/// <param name="Stage">When, and which share.</param>
/// <param name="OfTax">What of it is tax.</param>
/// <param name="ToPay">What is to be paid, tax and all.</param>
public sealed record Payment(StageShare Stage, Money OfTax, Money ToPay)
{
    /// <summary>What of it is not tax.</summary>
    public Money BeforeTax => ToPay - OfTax;
}

/// <summary>What the client is asked for. All amounts are in whole minor units and add up as they stand.</summary>
public sealed record Quoted
{
    /// <summary>The lines, at least one.</summary>
    public required IReadOnlyList<QuotedLine> Lines { get; init; }

    /// <summary>Whether the amounts of the lines have the tax in them.</summary>
    public required bool TaxIsIncluded { get; init; }

    /// <summary>The payments, which add up to the total.</summary>
    public required IReadOnlyList<Payment> Payments { get; init; }

    /// <summary>The sum of the lines: the price as it is quoted.</summary>
    public Money Price => Money.Sum(Lines.Select(line => line.Amount), Lines[0].Amount.Currency);

    /// <summary>The tax of all lines.</summary>
    public Money Tax => Money.Sum(Lines.Select(line => line.Tax), Lines[0].Tax.Currency);

    /// <summary>What the maker keeps.</summary>
    public Money BeforeTax => TaxIsIncluded ? Price - Tax : Price;

    /// <summary>What the client pays.</summary>
    public Money Total => TaxIsIncluded ? Price : Price + Tax;

    /// <summary>Quotes a price.</summary>
    /// <param name="beforeTax">The price before tax, not rounded.</param>
    /// <param name="delivery">Which share of it is for delivery, 0 to 1.</param>
    /// <param name="terms">The shop's tax, rounding and stages.</param>
    /// <param name="given">A price that is given already, as it is quoted; null to round the reckoned one.</param>
    public static Quoted Of(Money beforeTax, decimal delivery, PricingTerms terms, Money? given)
    {
        var tax = terms.Tax;
        (QuotedFor For, Percent Rate, decimal Share)[] parts = tax.OnDelivery is { } rate && delivery > 0
            ? [(QuotedFor.Piece, tax.Rate, 1 - delivery), (QuotedFor.Delivery, rate, delivery)]
            : [(QuotedFor.Piece, tax.Rate, 1)];
        decimal[] weights = [.. parts.Select(part => tax.IsIncluded ? part.Share * (1 + ShareOf(part.Rate)) : part.Share)];
        var price = given ?? (terms.Rounding ?? RoundingRule.ToMinorUnit(beforeTax.Currency)).Round(beforeTax * weights.Sum());
        var amounts = price.SharedOut(weights);
        var quoted = new Quoted
        {
            Lines = [.. parts.Select((part, at) => new QuotedLine(part.For, amounts[at], part.Rate, TaxOf(amounts[at], part.Rate, tax.IsIncluded)))],
            TaxIsIncluded = tax.IsIncluded,
            Payments = [],
        };
        return quoted with { Payments = PaymentsOf(quoted, terms.Stages) };
    }

    private static IReadOnlyList<Payment> PaymentsOf(Quoted quoted, IReadOnlyList<StageShare> stages)
    {
        decimal[] shares = [.. stages.Select(stage => stage.Share)];
        var taxes = quoted.Tax.SharedOut(shares);
        var kept = quoted.BeforeTax.SharedOut(shares);
        return [.. stages.Select((stage, at) => new Payment(stage, taxes[at], kept[at] + taxes[at]))];
    }

    private static Money TaxOf(Money amount, Percent rate, bool isIncluded)
    {
        var share = ShareOf(rate);
        return (isIncluded ? amount with { Amount = amount.Amount * share / (1 + share) } : amount * share).Rounded();
    }

    private static decimal ShareOf(Percent rate) => (decimal)rate.Value / 100;
}
