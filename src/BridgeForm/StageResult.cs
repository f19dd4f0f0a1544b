using BridgeForm.Project;

namespace BridgeForm;

/// <summary>What of a stage's result does not hang on its type.</summary>
/// <param name="stage">The stage.</param>
internal abstract class StageResult(Stage stage)
{
    /// <summary>The stage.</summary>
    public Stage Stage => stage;

    /// <summary>It was worked out since <see cref="Begin"/>.</summary>
    public bool IsAnew { get; protected set; }

    /// <summary>A new call begins.</summary>
    public void Begin() => IsAnew = false;
}

/// <summary>The result of a stage, kept with the parameters that it was worked out for.</summary>
/// <param name="stage">The stage.</param>
internal sealed class StageResult<T>(Stage stage) : StageResult(stage)
{
    private BridgeParameters? _for;
    private T? _value;

    /// <summary>The result of the last call.</summary>
    public T Value => _value!;

    /// <summary>The result for these parameters: the one there is, where the stage looks at nothing that changed.</summary>
    public T For(BridgeParameters parameters, Func<T> make)
    {
        if (_for is null || !StageInputs.AreSame(Stage, _for, parameters))
        {
            _for = null; // Nothing is kept of a work that is broken off.
            (_value, IsAnew) = (make(), true);
        }

        _for = parameters;
        return _value!;
    }
}
