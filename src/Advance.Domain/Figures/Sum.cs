using Advance.Domain.Facts;

namespace Advance.Domain.Figures;

/// <summary>
/// Builds a figure with its working in one breath:
/// <c>Sum.Of("delay", "τ = d / c", source).Put("d", path).Put("c", speed).Gives(Delays.Over)</c>.
/// The formula is a plain function of plain values; an unknown input makes an unknown result, and doubts travel along the inputs.
/// </summary>
public sealed class Sum
{
    private readonly string name;
    private readonly string formula;
    private readonly Publication source;

    private Sum(string name, string formula, Publication source)
    {
        this.name = name;
        this.formula = formula;
        this.source = source;
    }

    internal List<Input> Inputs { get; } = [];

    /// <summary>Starts a working.</summary>
    public static Sum Of(string name, string formula, Publication source) => new(name, formula, source);

    /// <summary>Puts in the first value.</summary>
    public Sum<A> Put<A>(string symbol, Figure<A> figure)
        where A : struct, IComparable<A> => new(this, Add(symbol, figure));

    /// <summary>Puts in a list of values, such as the terms of a total; the list is unknown where one of them is.</summary>
    public Sum<Terms<A>> PutAll<A>(string symbol, IEnumerable<Figure<A>> figures)
        where A : struct, IComparable<A> => new(this, AddAll(symbol, figures));

    internal Terms<A>? AddAll<A>(string symbol, IEnumerable<Figure<A>> figures)
        where A : struct, IComparable<A>
    {
        var all = figures.ToList();
        var known = all.All(figure => figure.Value is not null);
        var terms = new Terms<A>([.. all.Where(figure => figure.Value is not null).Select(figure => figure.Value!.Value)]);
        var doubts = all.Aggregate(Doubts.None, (sum, figure) => sum.With(figure.RestsOn));
        Inputs.Add(new Input(symbol, known ? terms : null, doubts, Reason.Derived.It, How: null) { Parts = [.. all.Select(figure => figure.How).OfType<Working>()] });
        return known ? terms : null;
    }

    internal A? Add<A>(string symbol, Figure<A> figure)
        where A : struct, IComparable<A>
    {
        Inputs.Add(new Input(symbol, figure.Value, figure.RestsOn, figure.Why, figure.How));
        return figure.Value;
    }

    internal Figure<R> Close<R>(R? result)
        where R : struct, IComparable<R>
    {
        var doubts = Inputs.Aggregate(Doubts.None, (sum, input) => sum.With(input.RestsOn));
        return new Figure<R>(result, doubts, Reason.Derived.It, new Working(name, formula, Inputs, result, source));
    }
}

/// <summary>A working with one input.</summary>
public sealed class Sum<A>
    where A : struct
{
    private readonly Sum sum;
    private readonly A? a;

    internal Sum(Sum sum, A? a)
    {
        this.sum = sum;
        this.a = a;
    }

    /// <summary>Puts in the second value.</summary>
    public Sum<A, B> Put<B>(string symbol, Figure<B> figure)
        where B : struct, IComparable<B> => new(sum, a, sum.Add(symbol, figure));

    /// <summary>Puts in a list of values.</summary>
    public Sum<A, Terms<B>> PutAll<B>(string symbol, IEnumerable<Figure<B>> figures)
        where B : struct, IComparable<B> => new(sum, a, sum.AddAll(symbol, figures));

    /// <summary>Works it out; unknown where an input is.</summary>
    public Figure<R> Gives<R>(Func<A, R> formula)
        where R : struct, IComparable<R> => sum.Close<R>(a is { } x ? formula(x) : null);
}

/// <summary>A working with two inputs.</summary>
public sealed class Sum<A, B>
    where A : struct
    where B : struct
{
    private readonly Sum sum;
    private readonly A? a;
    private readonly B? b;

    internal Sum(Sum sum, A? a, B? b)
    {
        this.sum = sum;
        this.a = a;
        this.b = b;
    }

    /// <summary>Puts in the third value.</summary>
    public Sum<A, B, C> Put<C>(string symbol, Figure<C> figure)
        where C : struct, IComparable<C> => new(sum, a, b, sum.Add(symbol, figure));

    /// <summary>Puts in a list of values.</summary>
    public Sum<A, B, Terms<C>> PutAll<C>(string symbol, IEnumerable<Figure<C>> figures)
        where C : struct, IComparable<C> => new(sum, a, b, sum.AddAll(symbol, figures));

    /// <summary>Works it out; unknown where an input is.</summary>
    public Figure<R> Gives<R>(Func<A, B, R> formula)
        where R : struct, IComparable<R> => sum.Close<R>(a is { } x && b is { } y ? formula(x, y) : null);
}

/// <summary>A working with three inputs.</summary>
public sealed class Sum<A, B, C>
    where A : struct
    where B : struct
    where C : struct
{
    private readonly Sum sum;
    private readonly A? a;
    private readonly B? b;
    private readonly C? c;

    internal Sum(Sum sum, A? a, B? b, C? c)
    {
        this.sum = sum;
        this.a = a;
        this.b = b;
        this.c = c;
    }

    /// <summary>Puts in the fourth value.</summary>
    public Sum<A, B, C, D> Put<D>(string symbol, Figure<D> figure)
        where D : struct, IComparable<D> => new(sum, a, b, c, sum.Add(symbol, figure));

    /// <summary>Puts in a list of values.</summary>
    public Sum<A, B, C, Terms<D>> PutAll<D>(string symbol, IEnumerable<Figure<D>> figures)
        where D : struct, IComparable<D> => new(sum, a, b, c, sum.AddAll(symbol, figures));

    /// <summary>Works it out; unknown where an input is.</summary>
    public Figure<R> Gives<R>(Func<A, B, C, R> formula)
        where R : struct, IComparable<R> => sum.Close<R>(a is { } x && b is { } y && c is { } z ? formula(x, y, z) : null);
}

/// <summary>A working with four inputs.</summary>
public sealed class Sum<A, B, C, D>
    where A : struct
    where B : struct
    where C : struct
    where D : struct
{
    private readonly Sum sum;
    private readonly A? a;
    private readonly B? b;
    private readonly C? c;
    private readonly D? d;

    internal Sum(Sum sum, A? a, B? b, C? c, D? d)
    {
        this.sum = sum;
        this.a = a;
        this.b = b;
        this.c = c;
        this.d = d;
    }

    /// <summary>Works it out; unknown where an input is.</summary>
    public Figure<R> Gives<R>(Func<A, B, C, D, R> formula)
        where R : struct, IComparable<R> => sum.Close<R>(a is { } x && b is { } y && c is { } z && d is { } w ? formula(x, y, z, w) : null);
}
