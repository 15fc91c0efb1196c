//! Property 2: no amount passes a limit that was heard. Every limit is reckoned here anew, from what was written.

use framegauge::plan::{Counted, Operation, Step};
use framegauge::settled_mm;
use framegauge::standard::{Row, ShellWindow};

use crate::case::{Case, Failure, came_off, fails, now, smallest};
use crate::safety::kind;

/// Rounding of a sum of settled lengths.
const HAIR: f64 = 2e-6;

pub fn amounts(case: &Case) -> Vec<Failure> {
    let mut out = Vec::new();
    for (step, place) in case.cuts() {
        stops(step, &place, &mut out);
        let Some(off) = step.off else { continue };
        let most = settled_mm(off.most);
        if off.least > off.most {
            fails(
                &mut out,
                format!("{} of less than nothing", step.operation),
                &place,
            );
        }
        let expected = if step.operation == Operation::Ream {
            Counted::Diameter
        } else {
            Counted::Depth
        };
        if off.of != expected {
            fails(
                &mut out,
                format!("{} counts another thing", step.operation),
                &place,
            );
        }
        for (limit, left) in limits(case, &place, step.operation) {
            if most > left + HAIR {
                fails(
                    &mut out,
                    format!("{} at {} past its {limit}", step.operation, kind(&place)),
                    format!("{place}: {most} may come off, {limit} leaves {left:.4}"),
                );
            }
        }
    }
    width(case, &mut out);
    out
}

/// A cut is stopped by something, and never goes past it.
fn stops(step: &Step, place: &str, out: &mut Vec<Failure>) {
    let operation = step.operation;
    if step.stops.is_empty() {
        fails(
            out,
            format!("{operation} at {} without a stop", kind(place)),
            place,
        );
    }
    let sized = matches!(
        operation,
        Operation::Ream | Operation::Deepen | Operation::Face
    );
    let Some(off) = step.off else {
        if sized {
            fails(
                out,
                format!("{operation} at {} without an amount", kind(place)),
                place,
            );
        }
        return;
    };
    for stop in &step.stops {
        if let Some(to_go) = stop.to_go
            && settled_mm(off.most) > settled_mm(to_go) + HAIR
        {
            let words = format!(
                "{place}: {} off, {} to go by {}",
                settled_mm(off.most),
                settled_mm(to_go),
                stop.limit
            );
            fails(
                out,
                format!("{operation} at {} past its own stop", kind(place)),
                words,
            );
        }
    }
}

/// Every limit on the amount of a cut, by exact values: its name, and what it leaves.
fn limits(case: &Case, place: &str, operation: Operation) -> Vec<(&'static str, f64)> {
    let mut out = Vec::new();
    for path in case.paths(place) {
        match operation {
            Operation::Face => faced(case, &path, &mut out),
            Operation::Ream => reamed(case, &path, &mut out),
            Operation::Deepen => {
                for limit in case
                    .told
                    .limits(&format!("{path}.limits"))
                    .iter()
                    .filter(|l| l.what == "bore_depth")
                {
                    if let (Some(upper), Some(depth)) =
                        (limit.upper, case.told.size(&format!("{path}.bore_depth")))
                    {
                        out.push(("bore depth", upper - depth));
                    }
                }
            }
            _ => {}
        }
    }
    out
}

fn faced(case: &Case, path: &str, out: &mut Vec<(&'static str, f64)>) {
    let told = &case.told;
    let field = if path.starts_with("brake") {
        "points"
    } else {
        "probes"
    };
    let Some(gone) = came_off(told, path, field) else {
        return;
    };
    for limit in told.limits(&format!("{path}.limits")) {
        match (limit.what, limit.upper, limit.lower) {
            ("depth", Some(upper), _) => out.push(("depth", upper - gone)),
            ("thickness", _, Some(lower)) => {
                let (pass, measured) = now(told, path, "thickness");
                if let Some(thick) = smallest(pass) {
                    out.push((
                        "thickness",
                        thick - lower - if measured { 0.0 } else { gone },
                    ));
                }
            }
            _ => {}
        }
    }
    let Some(end) = path
        .strip_suffix(".face")
        .filter(|p| p.starts_with("head_tube"))
    else {
        return;
    };
    let depth = told.size(&format!("{end}.bore_depth"));
    let gap = told.size(&format!("{end}.crown_gap"));
    if let (Some(depth), Some(insertion)) = (depth, told.size(&format!("{end}.part.insertion"))) {
        out.push(("insertion", depth - gone - insertion));
    }
    out.extend(gap.map(|gap| ("crown gap", gap - gone)));
    for limit in told.limits(&format!("{end}.limits")) {
        match (limit.what, limit.lower) {
            ("bore_depth", Some(lower)) => {
                out.extend(depth.map(|d| ("bore depth", d - gone - lower)))
            }
            ("crown_gap", Some(lower)) => out.extend(gap.map(|g| ("crown gap", g - gone - lower))),
            _ => {}
        }
    }
}

fn reamed(case: &Case, path: &str, out: &mut Vec<(&'static str, f64)>) {
    let told = &case.told;
    let field = if told.readings(&format!("{path}.bore")).is_empty() {
        "minor"
    } else {
        "bore"
    };
    let Some(bore) = smallest(now(told, path, field).0) else {
        return;
    };
    let outside = smallest(told.readings(&format!("{path}.outside")));
    let part = ["part", "post"]
        .iter()
        .find_map(|p| smallest(told.readings(&format!("{path}.{p}.outside"))));
    for limit in told.limits(&format!("{path}.limits")) {
        match (limit.what, limit.lower, limit.upper) {
            ("bore" | "minor", _, Some(upper)) => out.push(("bore", upper - bore)),
            ("wall", Some(lower), _) => {
                out.extend(outside.map(|o| ("wall", o - 2.0 * lower - bore)))
            }
            ("interference", Some(lower), _) => {
                out.extend(part.map(|p| ("interference", p - lower - bore)))
            }
            ("clearance", _, Some(upper)) => {
                out.extend(part.map(|p| ("clearance", p + upper - bore)))
            }
            _ => {}
        }
    }
}

/// The width of a shell: both faces together leave every least width that was stated.
fn width(case: &Case, out: &mut Vec<Failure>) {
    let told = &case.told;
    let sides = ["drive", "non_drive"].map(|side| format!("shell.{side}.face"));
    let off: f64 = case
        .cuts()
        .filter(|(step, place)| step.operation == Operation::Face && sides.contains(place))
        .filter_map(|(step, _)| step.off.map(|off| settled_mm(off.most)))
        .sum();
    if off <= 0.0 {
        return;
    }
    let gone: Option<f64> = sides
        .iter()
        .map(|side| came_off(told, side, "probes"))
        .sum();
    let (last, measured) = now(told, "shell", "width");
    let (Some(gone), Some(width)) = (gone, smallest(last)) else {
        return;
    };
    let left = width - if measured { 0.0 } else { gone };
    let mut least: Vec<(String, f64)> = told
        .limits("shell.limits")
        .iter()
        .filter(|l| l.what == "width")
        .filter_map(|l| Some((l.owner.clone(), l.lower?)))
        .collect();
    if let Some(code) = told.word("shell.window")
        && let Some(window) = ShellWindow::table().iter().find(|w| w.code == code)
        && told.word("shell.believed") == Some(window.shell.as_ref())
        && let Some(lower) = window.window.lower()
    {
        least.push((code.to_owned(), settled_mm(lower)));
    }
    for (owner, lower) in least {
        if off > left - lower + HAIR {
            let words = format!("{off} off both faces, {left} wide, at least {lower} by {owner}");
            fails(out, "faces of a shell past its width", words);
        }
    }
}
