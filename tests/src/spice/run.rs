//! Runs ngspice over many cases in one process and reads the node voltages back.

use super::netlist::{ANALYSIS_OPTIONS, Circuit, Drive};
use super::{Body, Case, SpiceError, or_fail};
use num_complex::Complex;
use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::Path;
use std::process::{Command, Stdio};

/// Node voltages by node name, V rms.
type Voltages = BTreeMap<String, Complex<f64>>;

/// A node seen from earth: what a person at it could draw on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Thevenin {
    /// Voltage to earth with nobody there, V rms.
    pub open_circuit_v: Complex<f64>,
    /// Impedance to earth with the supply at zero, Ω.
    pub impedance_ohm: Complex<f64>,
}

/// The program that solves the networks.
const PROGRAM: &str = "ngspice";

/// Cases per process: its set-up time grows faster than the number of nodes in a deck.
const CASES_PER_DECK: usize = 250;

/// The node voltages of every case, in its order, each with a person at a node or nobody.
///
/// Every node of the case is in its map; a leg without a switch appears under both its names.
///
/// # Panics
///
/// If ngspice is missing or gives no figures, or a case does not exist in the design.
pub fn run_batch(cases: &[(Case, Option<Body>)]) -> Vec<Voltages> {
    or_fail(run_batch_with(PROGRAM, cases))
}

pub(super) fn run_batch_with(
    program: &str,
    cases: &[(Case, Option<Body>)],
) -> Result<Vec<Voltages>, SpiceError> {
    let jobs = cases
        .iter()
        .map(|(case, body)| Ok((Circuit::of_case(case)?, Drive::Supply(body.as_ref()))))
        .collect::<Result<Vec<_>, SpiceError>>()?;
    solve(program, &jobs)
}

/// The Thévenin equivalent of one node of every case, in its order.
///
/// # Panics
///
/// If ngspice is missing or gives no figures, a case does not exist in the design, or a case has
/// no such node (`t` is there only with an aerial terminal).
pub fn thevenin_batch(cases: &[Case], node: &str) -> Vec<Thevenin> {
    or_fail(thevenin_of(cases, node))
}

fn thevenin_of(cases: &[Case], node: &str) -> Result<Vec<Thevenin>, SpiceError> {
    let mut jobs = Vec::new();
    for drive in [Drive::Supply(None), Drive::Probe(node)] {
        for case in cases {
            jobs.push((Circuit::of_case(case)?, drive));
        }
    }
    let solved = solve(PROGRAM, &jobs)?;
    let (open, probed) = solved.split_at(cases.len());
    open.iter()
        .zip(probed)
        .map(|(open, probed)| {
            Ok(Thevenin { open_circuit_v: at(open, node)?, impedance_ohm: at(probed, node)? })
        })
        .collect()
}

fn at(voltages: &Voltages, node: &str) -> Result<Complex<f64>, SpiceError> {
    voltages.get(node).copied().ok_or_else(|| failed(format!("no voltage for node {node}")))
}

type Job<'a> = (Circuit, Drive<'a>);

/// Solves the jobs of each frequency together: one AC point has one frequency.
fn solve(program: &str, jobs: &[Job<'_>]) -> Result<Vec<Voltages>, SpiceError> {
    let mut by_hertz: BTreeMap<u64, Vec<usize>> = BTreeMap::new();
    for (index, (circuit, _)) in jobs.iter().enumerate() {
        by_hertz.entry(circuit.hertz.to_bits()).or_default().push(index);
    }
    let mut solved = vec![Voltages::new(); jobs.len()];
    for indices in by_hertz.values() {
        for chunk in indices.chunks(CASES_PER_DECK) {
            let chunk_jobs: Vec<&Job<'_>> = chunk.iter().map(|index| &jobs[*index]).collect();
            for (index, voltages) in chunk.iter().zip(solve_deck(program, &chunk_jobs)?) {
                solved[*index] = voltages;
            }
        }
    }
    Ok(solved)
}

fn solve_deck(program: &str, jobs: &[&Job<'_>]) -> Result<Vec<Voltages>, SpiceError> {
    let folder = tempfile::tempdir()?;
    std::fs::write(folder.path().join("deck.cir"), deck(jobs)?)?;
    let log = run(program, folder.path())?;
    let raw = std::fs::read_to_string(folder.path().join("out.raw"))
        .map_err(|_| failed(format!("nothing was written. It said: {log}")))?;
    let vectors = read_raw(&raw)?;
    jobs.iter()
        .enumerate()
        .map(|(index, (circuit, _))| voltages(circuit, &prefix(index), &vectors))
        .collect()
}

fn prefix(index: usize) -> String {
    format!("k{index}_")
}

/// All cases side by side, sharing nothing but earth.
fn deck(jobs: &[&Job<'_>]) -> Result<String, SpiceError> {
    let mut text = String::from("* Cold Chassis: cases side by side\n");
    for (index, (circuit, drive)) in jobs.iter().enumerate() {
        text.push_str(&circuit.lines(&prefix(index), *drive)?);
    }
    let hertz = jobs.first().map_or(0.0, |(circuit, _)| circuit.hertz);
    let _ = write!(
        text,
        "{ANALYSIS_OPTIONS}.control\nset filetype=ascii\nset numdgt=16\n\
         ac lin 1 {hertz:e} {hertz:e}\nwrite out.raw all\nquit 0\n.endc\n.end\n"
    );
    Ok(text)
}

/// Runs the deck in its folder and gives what the program said.
fn run(program: &str, folder: &Path) -> Result<String, SpiceError> {
    // -n: a start-up file of this machine must not change the figures.
    let output = Command::new(program)
        .args(["-n", "-b", "deck.cir"])
        .current_dir(folder)
        .stdin(Stdio::null())
        .output()
        .map_err(|source| match source.kind() {
            std::io::ErrorKind::NotFound => SpiceError::Missing { program: program.to_owned() },
            _ => SpiceError::File { source },
        })?;
    let log = [output.stdout, output.stderr]
        .map(|said| String::from_utf8_lossy(&said).into_owned())
        .concat();
    // It goes on after many errors, so what it says counts as well as how it ends.
    let complaint = log
        .lines()
        .find(|line| ["error", "singular", "warning"].iter().any(|sign| says(line, sign)));
    match (output.status.success(), complaint) {
        (true, None) => Ok(log),
        (_, Some(line)) => Err(failed(line.to_owned())),
        (false, None) => Err(failed(format!("it ended with {}: {log}", output.status))),
    }
}

fn says(line: &str, sign: &str) -> bool {
    line.to_ascii_lowercase().contains(sign)
}

/// Reads the text form of a raw file with one point: names first, then values in that order.
///
/// Both headings are sought at the start of a line: "No. Variables:" comes before the names.
fn read_raw(raw: &str) -> Result<BTreeMap<String, Complex<f64>>, SpiceError> {
    let (head, values) =
        raw.split_once("\nValues:").ok_or_else(|| failed("its file has no values".to_owned()))?;
    let (_, variables) = head
        .split_once("\nVariables:")
        .ok_or_else(|| failed("its file has no names".to_owned()))?;
    let names = variables.lines().filter_map(|line| line.split_whitespace().nth(1));
    // The first value stands behind the number of the point.
    let figures = values.split_whitespace().skip(1);
    let vectors = names
        .map(str::to_owned)
        .zip(figures.map(read_complex))
        .map(|(name, figure)| figure.map(|figure| (name, figure)))
        .collect::<Result<BTreeMap<_, _>, _>>()?;
    Ok(vectors)
}

fn read_complex(text: &str) -> Result<Complex<f64>, SpiceError> {
    let pair = text.split_once(',').and_then(|(re, im)| {
        let figure = Complex::new(re.parse().ok()?, im.parse().ok()?);
        figure.is_finite().then_some(figure)
    });
    pair.ok_or_else(|| failed(format!("{text} is no complex number")))
}

/// Picks the nodes of one case out of the deck's.
fn voltages(
    circuit: &Circuit,
    prefix: &str,
    vectors: &BTreeMap<String, Complex<f64>>,
) -> Result<Voltages, SpiceError> {
    circuit
        .nodes()
        .into_iter()
        .map(|node| {
            let vector = format!("v({prefix}{})", circuit.written(node));
            Ok((node.to_owned(), at(vectors, &vector)?))
        })
        .collect()
}

fn failed(reason: String) -> SpiceError {
    SpiceError::Failed { reason }
}
