-- Uses the set-up of docs/editors.md as a person would, and writes down what is seen.
-- nvim --headless -u SETUP -i NONE -n --cmd "let g:job='JOB.json'" NOTE -c 'luafile neovim.lua'
local job = vim.fn.json_decode(vim.fn.readfile(vim.g.job))
local seen = {}

local function wait_for(what, holds)
  assert(vim.wait(15000, holds, 20), 'waited in vain for ' .. what)
end

local function messages()
  return vim.tbl_map(function(diagnostic)
    return { line = diagnostic.lnum, severity = diagnostic.severity, message = diagnostic.message, code = diagnostic.code }
  end, vim.diagnostic.get(0))
end

local function ask(method, position)
  local document = vim.lsp.util.make_text_document_params(0)
  local answers, problem = vim.lsp.buf_request_sync(0, method, { textDocument = document, position = position }, 10000)
  assert(answers, problem)
  for _, answer in pairs(answers) do
    assert(not answer.error, vim.inspect(answer.error))
    return answer.result
  end
end

local ok, problem = pcall(function()
  wait_for('remarks', function() return #vim.diagnostic.get(0) > 0 end)
  seen.filetype = vim.bo.filetype
  seen.remarks = messages()
  seen.hover = ask('textDocument/hover', job.hover).contents.value
  local completion = ask('textDocument/completion', job.completion)
  seen.completion = vim.tbl_map(function(item) return item.label end, completion.items or completion)
  vim.api.nvim_buf_set_lines(0, job.edit.line, job.edit.line + 1, false, { job.edit.text })
  wait_for('fewer remarks', function() return #vim.diagnostic.get(0) < #seen.remarks end)
  seen.remarksAfterEdit = messages()
end)
if not ok then seen.problem = tostring(problem) end
vim.fn.writefile({ vim.fn.json_encode(seen) }, job.out)
vim.cmd('qa!')
