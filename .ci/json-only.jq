# A copy of the bundled contract that a generator of tests can follow: JSON in, JSON out.
#
# It is given $answers, the live answer to each example request by the path that it was posted to; with
# a pair of example request and answer the generator changes one field at a time of what makes sense,
# where it would else draw aircraft that contradict themselves. For the same reason a request keeps of
# its optional fields those that the examples give. What the contract says in words is said in its schema
# language: such a field may be null. Left out is what the generator does not understand: an answer of any
# object, for it takes the first element of each list for the only form; and where it need not be given,
# a list with a least length above one, which it does not heed.
# A flight's rows are such lists through and through, under the names that single numbers have elsewhere: that
# calculation is left out whole. The service runs without a token here, and so without what asks for one.

def json_only:
    if has("content") then
        .content |= with_entries(select(.key == "application/json" or .key == "application/problem+json"))
    else . end;

def nullable:
    if has("$ref") then {allOf: [.], nullable: true} else .nullable = true end;

def answers_any_object:
    .responses["200"].content["application/json"].schema | .additionalProperties == true and (has("properties") | not);

# Whether a schema is such a list, or requires one.
def is_long_list($schemas):
    (if has("$ref") then $schemas[.["$ref"] | split("/") | last] else . end)
    | (.required // []) as $required
    | [., ((.properties // {}) | to_entries[] | select(.key | IN($required[])) | .value)]
    | any((.minItems // 0) > 1);

.components.schemas as $schemas
| ([$schemas | del(.Telemetry)[] | select(.additionalProperties == false)
    | .properties | to_entries[] | select(.value | is_long_list($schemas)) | .key]) as $unheeded
| del(.security, .components.securitySchemes)
| .components.examples |= walk(if type == "object" then with_entries(select(.key | IN($unheeded[]) | not)) else . end)
| ([.components.examples[].value | .. | objects | keys[]] | unique) as $given
| .paths |= with_entries(
    select(.key != "/v1/flight-review")
    | .key as $path
    | .value |= (
        with_entries(select(.value | (.operationId | endswith("ByQuery")) or answers_any_object | not))
        | map_values(
            .parameters = ((.parameters // []) | map(select(.in == "path")))
            | if .requestBody then .requestBody |= json_only else . end
            | .responses |= (del(.["401"]) | map_values(json_only))
            | del(.security)
            | (.requestBody.content["application/json"].examples // {} | keys) as $names
            | if ($names | length) == 1 then
                .responses["200"].content["application/json"].examples[$names[0]].value = $answers[$path]
              else . end)
        | with_entries(select(.value.responses["200"].content // {} | has("application/json"))))
    | select(.value != {}))
| .components.schemas |= map_values(
    if .additionalProperties == false then
        (.required // []) as $required
        | .properties |= with_entries(
            .key as $field
            | if $field | IN($required[]) then .
              else select($field | IN($given[])) | .value |= nullable end)
    else . end)
